using System.Collections.Immutable;
using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Evidence;

/// <summary>
/// The median of reported minutes or money, with the interval between two of the sorted values
/// (G. J. Hahn, W. Q. Meeker 1991, Statistical Intervals, distribution-free interval for a quantile).
/// </summary>
public sealed record MedianOfReports
{
    /// <summary>Below this many values they are listed, and no interval is given.</summary>
    public const int Fewest = 5;

    MedianOfReports(ImmutableArray<double> values) => Values = values;

    /// <summary>The reports, sorted upwards.</summary>
    public ImmutableArray<double> Values { get; }

    public double Median => (Values[(Values.Length - 1) / 2] + Values[Values.Length / 2]) / 2;

    /// <summary>Null with fewer than five reports.</summary>
    public Interval? Interval { get; private init; }

    /// <summary>
    /// How often such an interval holds the true median. The first that reaches the wanted confidence is taken;
    /// five values reach 0.9375 at most, so read this number and do not assume it.
    /// </summary>
    public double Coverage { get; private init; }

    /// <returns>Null without reports.</returns>
    public static MedianOfReports? Of(IEnumerable<double> values, double confidence = 0.95)
    {
        ImmutableArray<double> sorted = [.. values.Order()];
        if (sorted.IsEmpty)
            return null;
        if (sorted.Length < Fewest)
            return new(sorted);
        int rank = 1;
        while (CoverageOf(sorted.Length, rank + 1) >= confidence)
            rank++;
        return new(sorted)
        {
            Interval = new(sorted[rank - 1], sorted[^rank]),
            Coverage = CoverageOf(sorted.Length, rank),
        };
    }

    /// <summary>
    /// P(the median lies between the <paramref name="rank"/>-th smallest and the <paramref name="rank"/>-th largest of n)
    /// = 1 - 2 P(Bin(n, 1/2) &lt; rank).
    /// </summary>
    internal static double CoverageOf(int n, int rank) =>
        1 - 2 * SpecialFunctions.RegularisedBeta(0.5, n - rank + 1, rank);
}
