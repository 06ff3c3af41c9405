using System.Collections.Immutable;
using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>Stated probabilities from one range, and how often they came true.</summary>
/// <param name="Stated">The range; its upper end belongs to the next bin, but for 1.</param>
/// <param name="MeanStated">Their mean; null when the bin is empty.</param>
/// <param name="CameTrue">How many did.</param>
public sealed record ReliabilityBin(Interval Stated, double? MeanStated, Proportion CameTrue);

/// <summary>
/// How well the ranking does on the guide's own cases, each ranked by a model that has not seen it.
/// 'Something else' takes part as a cause like any other.
/// </summary>
/// <param name="First">True cause on the first place.</param>
/// <param name="FirstThree">True cause among the first three.</param>
/// <param name="Brier">Mean Brier score; null without cases.</param>
/// <param name="LogScore">Mean of -ln; null without cases.</param>
/// <param name="Reliability">Over all causes of all cases.</param>
public sealed record LeaveOneOut(
    Proportion First,
    Proportion FirstThree,
    double? Brier,
    double? LogScore,
    ImmutableArray<ReliabilityBin> Reliability)
{
    internal const int Bins = 10;

    public static LeaveOneOut Of(ImmutableArray<RankingTrial> trials) => new(
        new(trials.Count(t => t.Place == 0), trials.Length),
        new(trials.Count(t => t.Place < 3), trials.Length),
        trials.IsEmpty ? null : trials.Average(t => t.Brier),
        trials.IsEmpty ? null : trials.Average(t => t.Log),
        [.. Enumerable.Range(0, Bins).Select(b => Bin(trials, b))]);

    static ReliabilityBin Bin(ImmutableArray<RankingTrial> trials, int bin)
    {
        int count = trials.Sum(t => t.Counts[bin]);
        return new(
            new((double)bin / Bins, (double)(bin + 1) / Bins),
            count == 0 ? null : trials.Sum(t => t.Sums[bin]) / count,
            new(trials.Count(t => t.TruthBin == bin), count));
    }
}
