using System.Collections.Immutable;

namespace GuideGen.Diagnosis;

/// <summary>One thing that a check may show, with its likelihood under each cause, in the order of the problem's causes.</summary>
public sealed record Outcome(string Id, LikelihoodRow Likelihoods);

/// <summary>A check whose outcome depends on the cause, but not surely.</summary>
/// <param name="Id">The check.</param>
/// <param name="Effort">Without preparations.</param>
/// <param name="Outcomes">At least two; for each cause their likelihoods sum to 1.</param>
/// <param name="Setups">Preparations it needs, each made once.</param>
/// <param name="Tools">Tools it needs.</param>
public sealed record UncertainCheck(
    string Id,
    Effort Effort,
    ImmutableArray<Outcome> Outcomes,
    ImmutableArray<string> Setups,
    ImmutableArray<string> Tools) : IToolUser
{
    /// <summary>For each cause the id of its likeliest outcome, the first of equal ones: the check as if it were sure.</summary>
    public ImmutableArray<string> LikeliestOutcomes() =>
    [
        .. Enumerable.Range(0, Outcomes[0].Likelihoods.Count)
            .Select(c => Outcomes.MaxBy(o => Math.Round(o.Likelihoods[c], 12))!.Id),
    ];
}
