using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Proof;

/// <summary>The level that a case reaches, and what it lacks for the next one.</summary>
public sealed record ProofOfCase(ProofLevel Level, ImmutableArray<ProofNeed> MissingForNext)
{
    // The lamp goes off after three driving cycles in which the monitor ran and passed
    // (California Code of Regulations, title 13, section 1968.2 (d)(2)).
    const int LampRule = 3;
    const int Days = 30;
    const double Kilometres = 1000;

    static readonly ImmutableArray<(ProofNeed Need, Func<ProofFacts, bool> Met)> Confirmation =
    [
        (ProofNeed.ShownBefore, f => f.ShownBefore),
        (ProofNeed.OneChange, f => f.OneChange),
        (ProofNeed.Cleared, f => f.Cleared || !f.HadCode),
        (ProofNeed.ThreeMonitorPasses, f => f.MonitorPasses >= LampRule || !f.HadCode),
        (ProofNeed.NoCodes, f => f.CodesAfter == CodesAfter.None || !f.HadCode),
        (ProofNeed.SymptomGone, f => f.SymptomGone == true),
        (ProofNeed.FollowUp, f => f.FollowUpDays >= Days || f.FollowUpKilometres >= Kilometres),
        (ProofNeed.QuietCycles, f => f.Recurrence is not { } r || f.CyclesSince >= Intermittent.CyclesNeeded(r)),
    ];

    public static ProofOfCase Of(ProofFacts facts)
    {
        if (facts.SymptomGone == false || facts.CodesAfter == CodesAfter.Back)
            return new(ProofLevel.Refuted, []);
        ImmutableArray<ProofNeed> missing = [.. Confirmation.Where(c => !c.Met(facts)).Select(c => c.Need)];
        if (missing.IsEmpty)
            return facts.Evidence == PartEvidence.None
                ? new(ProofLevel.Confirmed, [ProofNeed.IndependentEvidence])
                : new(ProofLevel.Proved, []);
        return Verified(facts)
            ? new(ProofLevel.Probable, missing)
            : new(ProofLevel.Claimed, [ProofNeed.SomeVerification]);
    }

    /// <summary>What keeps a case from a level; nothing if it reaches that level or a higher one.</summary>
    public static ImmutableArray<ProofNeed> Lacks(ProofFacts facts, ProofLevel level)
    {
        if (Of(facts).Level >= level)
            return [];
        if (level >= ProofLevel.Confirmed)
        {
            var unmet = Confirmation.Where(c => !c.Met(facts)).Select(c => c.Need);
            return level == ProofLevel.Proved && facts.Evidence == PartEvidence.None ? [.. unmet, ProofNeed.IndependentEvidence] : [.. unmet];
        }

        ImmutableArray<ProofNeed> contrary =
        [
            .. facts.CodesAfter == CodesAfter.Back ? [ProofNeed.NoCodes] : Array.Empty<ProofNeed>(),
            .. facts.SymptomGone == false ? [ProofNeed.SymptomGone] : Array.Empty<ProofNeed>(),
        ];
        return contrary.IsEmpty ? [ProofNeed.SomeVerification] : contrary;
    }

    static bool Verified(ProofFacts facts)
    {
        bool monitor = facts.MonitorPasses > 0 && facts.CodesAfter != CodesAfter.Pending;
        bool quiet = facts.SymptomGone == true && facts.FollowUpDays >= Days;
        return monitor || quiet;
    }
}
