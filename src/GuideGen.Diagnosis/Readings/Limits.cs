namespace GuideGen.Diagnosis.Readings;

/// <summary>What a reading may be: from <paramref name="Low"/> to <paramref name="High"/>, either of them open.</summary>
public readonly record struct Limits(double? Low, double? High);

public enum Verdict
{
    /// <summary>Inside, whatever the meter's error.</summary>
    Pass,

    /// <summary>Nearer to a limit than the meter can tell; a good reading and a bad one look the same here.</summary>
    TooClose,
    TooLow,
    TooHigh,
}

/// <summary>Guard bands on both sides of a limit (JCGM 106:2012): three outcomes, where two would pretend.</summary>
public static class Guard
{
    /// <param name="value">The reading.</param>
    /// <param name="limits">In the same unit.</param>
    /// <param name="uncertainty">Expanded uncertainty of the reading, 0 or more, in the same unit.</param>
    public static Verdict Judge(double value, Limits limits, double uncertainty)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(uncertainty);
        if (value < limits.Low - uncertainty)
            return Verdict.TooLow;
        if (value > limits.High + uncertainty)
            return Verdict.TooHigh;
        bool near = value < limits.Low + uncertainty || value > limits.High - uncertainty;
        return near ? Verdict.TooClose : Verdict.Pass;
    }

    /// <summary>
    /// The range in which a reading passes; null where the meter is too coarse for these limits, so that none can.
    /// </summary>
    public static Limits? Acceptance(Limits limits, double uncertainty)
    {
        Limits inner = new(limits.Low + uncertainty, limits.High - uncertainty);
        return inner.Low > inner.High ? null : inner;
    }
}

/// <summary>A meter's accuracy as its maker states it: plus or minus so many per cent of the reading and so many digits.</summary>
/// <param name="Percent">0.5 for 0.5 %.</param>
/// <param name="Digits">Counts of the last digit.</param>
/// <param name="Digit">What the last digit is worth, in the unit of the reading.</param>
public readonly record struct MeterAccuracy(double Percent, double Digits, double Digit)
{
    public double Uncertainty(double reading) => Math.Abs(reading) * Percent / 100 + Digits * Digit;
}
