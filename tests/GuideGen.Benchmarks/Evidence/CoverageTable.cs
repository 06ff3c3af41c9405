using System.Globalization;
using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Benchmarks.Evidence;

/// <summary>Whether a range held the true share.</summary>
readonly record struct Held(double True, bool Contains);

/// <summary>
/// How often ranges hold the true share, over all shares and by how large the share is: near 0 a count is 0 or 1 in most
/// guides, the range then begins at 0, and its cover jumps with the share (L. D. Brown, T. T. Cai, A. DasGupta 2001).
/// </summary>
static class CoverageTable
{
    static readonly (double From, double To)[] Bands = [(0, 0.05), (0.05, 0.2), (0.2, 0.8)];

    public static string Head { get; } =
        "| range | nominal | covers | true share to 5 % | 5 to 20 % | 20 to 80 % | shares |\n| --- | --: | --: | --: | --: | --: | --: |";

    public static string Row(string what, double nominal, IEnumerable<Held> held)
    {
        var all = held.ToList();
        var cells = Bands.Select(b => Percent(all.Where(h => h.True >= b.From && h.True < b.To))).Prepend(Percent(all));
        return string.Create(CultureInfo.InvariantCulture, $"| {what} | {nominal * 100:F0} % | {string.Join(" | ", cells)} | {all.Count:N0} |");
    }

    /// <summary>
    /// The same without chance: every number of cases from 5 to 80, every count weighed by how likely it is, and true shares
    /// spread evenly, which is how the named paper compares ranges.
    /// </summary>
    public static string EvenRow(string what, double nominal, IntervalMethod method)
    {
        const int Steps = 500;
        var cover = Enumerable.Range(5, 76).AsParallel().AsOrdered().SelectMany(n =>
        {
            var ranges = Enumerable.Range(0, n + 1).Select(x => new Proportion(x, n).Interval(nominal, method)!.Value).ToArray();
            return Enumerable.Range(0, Steps).Select(i => (i + 0.5) / Steps).Select(p => (True: p, Cover: Binomial(n, p).Zip(ranges, (chance, range) => range.Contains(p) ? chance : 0).Sum()));
        }).ToList();
        string Mean(double from, double to) => string.Create(CultureInfo.InvariantCulture, $"{cover.Where(c => c.True >= from && c.True < to).Average(c => c.Cover) * 100:F1} %");
        var cells = Bands.Select(b => Mean(b.From, b.To)).Prepend(Mean(0, 1));
        return string.Create(CultureInfo.InvariantCulture, $"| {what} | {nominal * 100:F0} % | {string.Join(" | ", cells)} | computed |");
    }

    /// <summary>P(x of n) for x from 0 to n, each from the one before.</summary>
    static IEnumerable<double> Binomial(int n, double p)
    {
        var chance = Math.Pow(1 - p, n);
        for (var x = 0; x <= n; x++)
        {
            yield return chance;
            chance *= (n - x) / (x + 1.0) * p / (1 - p);
        }
    }

    static string Percent(IEnumerable<Held> held) => string.Create(CultureInfo.InvariantCulture, $"{held.Average(h => h.Contains ? 100.0 : 0):F1} %");
}
