using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// A model as it is sent to the browser, where <c>ranking.unpack</c> opens it again. Most findings say something of
/// few causes and the same of all others, so each row of likelihoods is written as its most frequent value followed
/// by pairs of index and value for the rest: <c>[0.05, 3, 0.9]</c>.
/// </summary>
public sealed record PackedModel(
    ImmutableArray<Hypothesis> Hypotheses,
    ImmutableArray<Finding> Findings,
    ImmutableArray<FindingGroup> Groups,
    ImmutableArray<UncertainCheck> Checks,
    ImmutableArray<Setup> Setups)
{
    public static PackedModel Of(RankingModel model) => new(
        model.Hypotheses,
        [.. model.Findings.Select(f => f with { Likelihoods = Pack(f.Likelihoods) })],
        [
            .. model.Groups.Select(g => g with
            {
                Joint = [.. g.Joint.Select(r => r with { Likelihoods = Pack(r.Likelihoods) })],
            }),
        ],
        [
            .. model.Checks.Select(c => c with
            {
                Outcomes = [.. c.Outcomes.Select(o => o with { Likelihoods = Pack(o.Likelihoods) })],
            }),
        ],
        model.Setups);

    static ImmutableArray<double> Pack(ImmutableArray<double> row)
    {
        // Of equally frequent values the smallest, so that the same row is always written the same way.
        double usual = row.GroupBy(v => v).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key;
        return
        [
            usual,
            .. row.SelectMany((value, index) => value == usual ? Enumerable.Empty<double>() : [index, value]),
        ];
    }
}
