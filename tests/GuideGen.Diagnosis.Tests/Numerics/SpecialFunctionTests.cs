using CsCheck;
using GuideGen.Diagnosis.Numerics;
using ReferenceBeta = MathNet.Numerics.Distributions.Beta;
using ReferenceFunctions = MathNet.Numerics.SpecialFunctions;
using ReferenceNormal = MathNet.Numerics.Distributions.Normal;

namespace GuideGen.Diagnosis.Tests.Numerics;

public sealed class SpecialFunctionTests
{
    // Source: SciPy 1.10.1 and MathNet.Numerics 5.0.0 agree on these.
    [Theory]
    [InlineData(0.5, 0.5723649429)]
    [InlineData(10.3, 13.4820367861)]
    public void Log_gamma_has_the_library_values(double x, double expected) =>
        Assert.Equal(expected, SpecialFunctions.LogGamma(x), 1e-10);

    // Source: SciPy 1.10.1 and MathNet.Numerics 5.0.0 agree on these.
    [Theory]
    [InlineData(0.3, 2.5, 4.5, 0.4065390167)]
    [InlineData(0.5, 8.6, 5.4, 0.1878922847)]
    public void Incomplete_beta_has_the_library_values(double x, double a, double b, double expected) =>
        Assert.Equal(expected, SpecialFunctions.RegularisedBeta(x, a, b), 1e-10);

    // Source: normal tables; ten digits from SciPy 1.10.1.
    [Theory]
    [InlineData(0.80, 1.2815515655)]
    [InlineData(0.90, 1.6448536270)]
    [InlineData(0.95, 1.9599639845)]
    [InlineData(0.99, 2.5758293035)]
    public void Normal_quantiles_have_the_table_values(double confidence, double expected) =>
        Assert.Equal(expected, Normal.TwoSided(confidence), 1e-9);

    [Fact]
    public void Log_gamma_agrees_with_the_reference_library() => Gen.Double[0.001, 5000].Sample(x =>
        Math.Abs(SpecialFunctions.LogGamma(x) - ReferenceFunctions.GammaLn(x))
            <= 1e-11 * Math.Max(1, Math.Abs(ReferenceFunctions.GammaLn(x))));

    [Fact]
    public void Incomplete_beta_agrees_with_the_reference_library() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0.05, 900], Gen.Double[0.05, 900]).Sample((x, a, b) =>
            Math.Abs(SpecialFunctions.RegularisedBeta(x, a, b) - ReferenceFunctions.BetaRegularized(a, b, x))
                <= 1e-9);

    [Fact]
    public void Inverse_beta_undoes_the_reference_librarys_distribution() =>
        Gen.Select(Gen.Double[0.0005, 0.9995], Gen.Double[0.3, 500], Gen.Double[0.3, 500]).Sample((p, a, b) =>
            Math.Abs(ReferenceBeta.CDF(a, b, SpecialFunctions.InverseRegularisedBeta(p, a, b)) - p) <= 1e-9);

    /// <summary>An opinion of a few hundredths of a case has its low end far below what halving an interval reaches.</summary>
    [Theory]
    [InlineData(0.025, 0.05)]
    [InlineData(0.025, 0.2)]
    [InlineData(0.1, 0.08)]
    [InlineData(0.5, 0.05)]
    [InlineData(0.9, 0.3)]
    public void A_quantile_next_to_nought_is_the_closed_form(double p, double a) =>
        Assert.Equal(1, SpecialFunctions.InverseRegularisedBeta(p, a, 1) / Math.Pow(p, 1 / a), 1e-9); // I_x(a, 1) = x^a, DLMF 8.17.4 and 8.17.7

    [Fact]
    public void A_quantile_next_to_nought_has_its_probability_below_it() =>
        Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0.02, 0.3], Gen.Double[0.5, 200]).Sample((p, a, b) =>
            Math.Abs(SpecialFunctions.RegularisedBeta(SpecialFunctions.InverseRegularisedBeta(p, a, b), a, b) - p) <= 1e-9);

    [Fact]
    public void Normal_quantile_undoes_the_reference_librarys_distribution() => Gen.Double[0.01, 0.9999].Sample(c =>
        Math.Abs(2 * ReferenceNormal.CDF(0, 1, Normal.TwoSided(c)) - 1 - c)
            <= 1e-9);
}
