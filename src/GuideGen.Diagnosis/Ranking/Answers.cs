using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// What is known of one vehicle. A finding that is not in <paramref name="Findings"/> is unknown, which is not absent, but for what
/// was looked for. Ids that the model does not have are passed over.
/// </summary>
/// <param name="Findings">True for present, false for absent.</param>
/// <param name="Outcomes">Checks done, each with what it showed.</param>
public sealed record Answers(
    ImmutableDictionary<string, bool> Findings, ImmutableDictionary<string, string> Outcomes)
{
    public static Answers Nothing { get; } =
        new(ImmutableDictionary<string, bool>.Empty, ImmutableDictionary<string, string>.Empty);

    /// <summary>
    /// Findings that would have been told either way, such as the codes of the control units that were read: one that
    /// <see cref="Findings"/> leaves out was not there. What is not in here is told as the owner likes: what was there nearly
    /// always, what was not seldom.
    /// </summary>
    [JsonIgnore]
    public IReadOnlySet<string> LookedFor { get; init; } = FrozenSet<string>.Empty;

    /// <returns>Null if it is unknown whether the finding was there.</returns>
    public bool? Has(string finding) =>
        Findings.TryGetValue(finding, out bool present) ? present : LookedFor.Contains(finding) ? false : null;

    public bool Knows(string finding) => Findings.ContainsKey(finding) || LookedFor.Contains(finding);

    public Answers With(string finding, bool present) => this with { Findings = Findings.SetItem(finding, present) };

    public Answers WithOutcome(string check, string outcome) =>
        this with { Outcomes = Outcomes.SetItem(check, outcome) };
}
