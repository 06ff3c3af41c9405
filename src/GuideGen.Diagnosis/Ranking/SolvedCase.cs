using System.Collections.Frozen;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>A solved case as the ranking sees it. A cause that the model lacks counts as something else.</summary>
public sealed record SolvedCase(string Id, string Cause, Answers Answers)
{
    /// <summary>
    /// Findings that the case would have told either way, such as the codes of the control units that were read. What is not
    /// in here is told as the owner likes: what was there nearly always, what was not seldom.
    /// </summary>
    public IReadOnlySet<string> LookedFor { get; init; } = FrozenSet<string>.Empty;
}
