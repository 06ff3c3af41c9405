using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// What is known of one vehicle. A finding that is not in <paramref name="Findings"/> is unknown, which is not absent.
/// Ids that the model does not have are passed over.
/// </summary>
/// <param name="Findings">True for present, false for absent.</param>
/// <param name="Outcomes">Checks done, each with what it showed.</param>
public sealed record Answers(
    ImmutableDictionary<string, bool> Findings, ImmutableDictionary<string, string> Outcomes)
{
    public static Answers Nothing { get; } =
        new(ImmutableDictionary<string, bool>.Empty, ImmutableDictionary<string, string>.Empty);

    public Answers With(string finding, bool present) => this with { Findings = Findings.SetItem(finding, present) };

    public Answers WithOutcome(string check, string outcome) =>
        this with { Outcomes = Outcomes.SetItem(check, outcome) };
}
