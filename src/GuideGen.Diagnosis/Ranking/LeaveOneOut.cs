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
    const int Bins = 10;

    /// <param name="cases">Confirmed cases.</param>
    /// <param name="fit">Makes the model from the cases that are left.</param>
    public static LeaveOneOut Of(
        ImmutableArray<SolvedCase> cases, Func<IReadOnlyCollection<SolvedCase>, RankingModel> fit) =>
        OfEach(cases, i => fit(cases.RemoveAt(i)));

    /// <param name="cases">Confirmed cases.</param>
    /// <param name="without">Makes the model that has not seen the case of an index; it may leave out what that case does not answer.</param>
    public static LeaveOneOut OfEach(ImmutableArray<SolvedCase> cases, Func<int, RankingModel> without)
    {
        ImmutableArray<Trial> trials = [.. cases.Select((c, i) => Try(c, without(i)))];
        return new(
            new(trials.Count(t => t.Place == 0), trials.Length),
            new(trials.Count(t => t.Place < 3), trials.Length),
            trials.IsEmpty ? null : trials.Average(t => Scores.Brier(t.Stated, t.Place)),
            trials.IsEmpty ? null : trials.Average(t => Scores.Log(t.Stated, t.Place)),
            Bin(trials));
    }

    // Sorted by rank, so the place of the truth is its index.
    sealed record Trial(double[] Stated, int Place);

    static Trial Try(SolvedCase solved, RankingModel model)
    {
        ImmutableArray<RankedCause> ranked = CauseRanking.Of(model, solved.Answers).Causes;
        string truth = ranked.Any(c => c.Id == solved.Cause) ? solved.Cause : WeightedCause.SomethingElse;
        return new([.. ranked.Select(c => c.Probability)], ranked.TakeWhile(c => c.Id != truth).Count());
    }

    static ImmutableArray<ReliabilityBin> Bin(ImmutableArray<Trial> trials)
    {
        var stated = trials.SelectMany(t => t.Stated.Select((p, place) => (Probability: p, True: place == t.Place)))
            .ToLookup(s => Math.Min((int)(s.Probability * Bins), Bins - 1));
        return
        [
            .. Enumerable.Range(0, Bins).Select(b => new ReliabilityBin(
                new((double)b / Bins, (double)(b + 1) / Bins),
                stated[b].Any() ? stated[b].Average(s => s.Probability) : null,
                new(stated[b].Count(s => s.True), stated[b].Count()))),
        ];
    }
}
