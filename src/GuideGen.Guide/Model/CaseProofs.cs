using GuideGen.Diagnosis.Proof;

namespace GuideGen.Guide.Model;

/// <summary>From what a case states to the level it reaches.</summary>
public static class CaseProofs
{
    /// <summary>The levels as they are called in front matter.</summary>
    internal static (string Word, ProofLevel Level)[] Words { get; } =
    [
        ("proved", ProofLevel.Proved),
        ("confirmed", ProofLevel.Confirmed),
        ("probable", ProofLevel.Probable),
        ("claimed", ProofLevel.Claimed),
        ("refuted", ProofLevel.Refuted),
    ];

    const double KilometresPerMile = 1.609344;

    /// <param name="distanceUnit">The vehicle's: km or mi.</param>
    public static ProofOfCase Of(SolvedCase solved, string distanceUnit) => ProofOfCase.Of(FactsOf(solved, distanceUnit));

    /// <param name="distanceUnit">The vehicle's: km or mi.</param>
    public static ProofFacts FactsOf(SolvedCase solved, string distanceUnit)
    {
        var proof = solved.Proof;
        return new ProofFacts
        {
            HadCode = !solved.Codes.IsEmpty,
            ShownBefore = proof.ShownBefore,
            OneChange = proof.OneChange,
            Cleared = proof.Cleared,
            MonitorPasses = proof.MonitorPasses,
            CodesAfter = CodesAfterOf(proof.CodesAfter),
            SymptomGone = proof.SymptomGone,
            FollowUpDays = proof.FollowUp.Days,
            FollowUpKilometres = proof.FollowUp.Distance * (distanceUnit == "mi" ? KilometresPerMile : 1),
            Recurrence = proof.Recurrence?.Share,
            CyclesSince = proof.Recurrence?.QuietCycles ?? 0,
            Evidence = EvidenceOf(proof.Evidence),
        };
    }

    static Diagnosis.Proof.CodesAfter CodesAfterOf(CodesAfter codes) => codes switch
    {
        CodesAfter.Unread => Diagnosis.Proof.CodesAfter.Unread,
        CodesAfter.None => Diagnosis.Proof.CodesAfter.None,
        CodesAfter.Pending => Diagnosis.Proof.CodesAfter.Pending,
        CodesAfter.Permanent => Diagnosis.Proof.CodesAfter.Permanent,
        CodesAfter.Back => Diagnosis.Proof.CodesAfter.Back,
        _ => throw new ArgumentOutOfRangeException(nameof(codes)),
    };

    static PartEvidence EvidenceOf(ProofEvidence evidence) => evidence switch
    {
        ProofEvidence.None => PartEvidence.None,
        ProofEvidence.Measured => PartEvidence.Measured,
        ProofEvidence.SwappedBack => PartEvidence.SwappedBack,
        _ => throw new ArgumentOutOfRangeException(nameof(evidence)),
    };
}
