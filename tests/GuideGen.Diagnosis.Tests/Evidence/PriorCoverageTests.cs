using GuideGen.Diagnosis.Evidence;
using ReferenceBeta = MathNet.Numerics.Distributions.Beta;
using ReferenceFunctions = MathNet.Numerics.SpecialFunctions;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class PriorCoverageTests
{
    /// <summary>
    /// If the truth lies about the author's opinion as its stated worth says, the range holds it just as often as it says:
    /// summed over all counts, each as likely as opinion and chance make it (A. Gelman et al. 2013, Bayesian Data Analysis,
    /// 3rd ed., 2.4, the beta-binomial distribution).
    /// </summary>
    [Theory]
    [InlineData(0.02, 2, 20, 0.95)]
    [InlineData(0.02, 2, 20, 0.80)]
    [InlineData(0.1, 4, 5, 0.95)]
    [InlineData(0.1, 30, 80, 0.80)]
    [InlineData(0.5, 10, 40, 0.95)]
    [InlineData(0.9, 6, 12, 0.80)]
    public void Range_of_an_author_as_good_as_his_word_covers_what_it_says(double share, double worth, int cases, double said)
    {
        double a = share * worth, b = worth - a;

        var cover = Enumerable.Range(0, cases + 1).Sum(x =>
        {
            var posterior = CausePosterior.FromShares([new("a", share), new("b", 1 - share)], worth, new Dictionary<string, int> { ["a"] = x, ["b"] = cases - x }).Share("a")!.Value;
            var range = posterior.Interval(said);
            var inside = ReferenceBeta.CDF(a + x, b + cases - x, range.High) - ReferenceBeta.CDF(a + x, b + cases - x, range.Low);
            return Math.Exp(ReferenceFunctions.BinomialLn(cases, x) + ReferenceFunctions.BetaLn(a + x, b + cases - x) - ReferenceFunctions.BetaLn(a, b)) * inside;
        });

        Assert.Equal(said, cover, 1e-8);
    }
}
