using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Evidence;

public enum IntervalMethod
{
    /// <summary>Score interval (E. B. Wilson 1927, JASA 22:209-212).</summary>
    Wilson,

    /// <summary>Score interval with continuity correction (R. G. Newcombe 1998, Stat. Med. 17:857-872, method 4).</summary>
    WilsonCorrected,

    /// <summary>
    /// Equal-tailed quantiles of Beta(x + 1/2, n - x + 1/2), with 0 at x = 0 and 1 at x = n
    /// (L. D. Brown, T. T. Cai, A. DasGupta 2001, Statist. Sci. 16:101-133).
    /// </summary>
    Jeffreys,

    /// <summary>Exact tails (C. J. Clopper, E. S. Pearson 1934, Biometrika 26:404-413); never covers less than it says.</summary>
    Exact,
}

internal static class BinomialIntervals
{
    public static Interval Of(Proportion reports, double confidence, IntervalMethod method) => method switch
    {
        IntervalMethod.Wilson => Wilson(reports, Normal.TwoSided(confidence)),
        IntervalMethod.WilsonCorrected => WilsonCorrected(reports, Normal.TwoSided(confidence)),
        IntervalMethod.Jeffreys => BetaTails(reports, (1 - confidence) / 2, 0.5, 0.5),
        IntervalMethod.Exact => BetaTails(reports, (1 - confidence) / 2, 0, 1),
        _ => throw new ArgumentOutOfRangeException(nameof(method)),
    };

    static Interval Wilson(Proportion reports, double z)
    {
        double n = reports.Total, p = reports.Count / n;
        double scale = 1 + z * z / n;
        double centre = (p + z * z / (2 * n)) / scale;
        double half = z / scale * Math.Sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        return Closed(reports, centre - half, centre + half);
    }

    static Interval WilsonCorrected(Proportion reports, double z)
    {
        double n = reports.Total, p = reports.Count / n, q = 1 - p;
        double low = z * z - 1 - z * Math.Sqrt(z * z - 2 - 1 / n + 4 * p * (n * q + 1));
        double high = z * z + 1 + z * Math.Sqrt(z * z + 2 - 1 / n + 4 * p * (n * q - 1));
        double scale = 2 * (n + z * z);
        return Closed(reports, (2 * n * p + low) / scale, (2 * n * p + high) / scale);
    }

    // Both beta intervals differ only in what they add to the counts on the inner and the outer side.
    static Interval BetaTails(Proportion reports, double tail, double inner, double outer)
    {
        double x = reports.Count, rest = reports.Total - reports.Count;
        double low = x == 0 ? 0 : SpecialFunctions.InverseRegularisedBeta(tail, x + inner, rest + outer);
        double high = rest == 0 ? 1 : SpecialFunctions.InverseRegularisedBeta(1 - tail, x + outer, rest + inner);
        return new(low, high);
    }

    // With no or only hits the outer end is exact in theory; rounding must not show there.
    static Interval Closed(Proportion reports, double low, double high) => new(
        reports.Count == 0 ? 0 : Math.Max(0, low),
        reports.Count == reports.Total ? 1 : Math.Min(1, high));
}
