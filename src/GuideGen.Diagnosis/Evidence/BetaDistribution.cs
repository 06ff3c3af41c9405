using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Evidence;

/// <summary>What is believed of one share: Beta(<paramref name="Alpha"/>, <paramref name="Beta"/>), both above 0.</summary>
public readonly record struct BetaDistribution(double Alpha, double Beta)
{
    public double Mean => Alpha / (Alpha + Beta);

    public double Median => Quantile(0.5);

    public double Quantile(double p) => SpecialFunctions.InverseRegularisedBeta(p, Alpha, Beta);

    /// <summary>The equal-tailed interval.</summary>
    public Interval Interval(double confidence = 0.95) =>
        new(Quantile((1 - confidence) / 2), Quantile((1 + confidence) / 2));
}
