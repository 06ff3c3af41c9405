using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>A case is as well proved as its sender says. More than he says is no matter: nothing counts by his word.</summary>
sealed class CaseLevelInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Cases.SelectMany(c =>
        c.Level is { } level ? Compare(level, CaseProofs.FactsOf(c, guide.Vehicle.DistanceUnit.Value)) : []);

    static IEnumerable<Finding> Compare(Located<ProofLevel> said, ProofFacts facts)
    {
        var lacks = ProofOfCase.Lacks(facts, said.Value);
        if (!lacks.IsEmpty)
            yield return Rules.CaseLevelUnreached.At(
                said.Span, Word(said.Value), Word(ProofOfCase.Of(facts).Level), string.Join("; ", lacks.Select(l => Asked(l, facts))));
    }

    static string Word(ProofLevel level) => CaseProofs.Words.Single(w => w.Level == level).Word;

    /// <summary>In the keys that the case would have to state.</summary>
    static string Asked(ProofNeed need, ProofFacts facts) => need switch
    {
        ProofNeed.ShownBefore => "'shown-before: true'",
        ProofNeed.OneChange => "'one-change: true'",
        ProofNeed.Cleared => "'cleared: true'",
        ProofNeed.ThreeMonitorPasses => "'monitor-passes' of 3 or more",
        ProofNeed.NoCodes => "'codes-after: none'",
        ProofNeed.SymptomGone => "'symptom-gone: true'",
        ProofNeed.FollowUp => "'follow-up' of 30 days or 1000 km",
        ProofNeed.QuietCycles => $"'quiet-cycles' of {Intermittent.CyclesNeeded(facts.Recurrence!.Value)} or more",
        ProofNeed.IndependentEvidence => "'evidence: measured' or 'swapped-back'",
        ProofNeed.SomeVerification => "'monitor-passes' of 1 or more, or 'symptom-gone: true' with 30 days of 'follow-up'",
        _ => throw new ArgumentOutOfRangeException(nameof(need)),
    };
}
