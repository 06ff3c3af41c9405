using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Model;
using Stated = GuideGen.Guide.Model;

namespace GuideGen.Site.Weighing;

/// <summary>From what a case states to the level it reaches.</summary>
static class CaseProofs
{
    const double KilometresPerMile = 1.609344;

    /// <param name="distanceUnit">The vehicle's: km or mi.</param>
    public static ProofOfCase Of(SolvedCase solved, string distanceUnit) => ProofOfCase.Of(FactsOf(solved, distanceUnit));

    static ProofFacts FactsOf(SolvedCase solved, string distanceUnit)
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

    static Diagnosis.Proof.CodesAfter CodesAfterOf(Stated.CodesAfter codes) => codes switch
    {
        Stated.CodesAfter.Unread => Diagnosis.Proof.CodesAfter.Unread,
        Stated.CodesAfter.None => Diagnosis.Proof.CodesAfter.None,
        Stated.CodesAfter.Pending => Diagnosis.Proof.CodesAfter.Pending,
        Stated.CodesAfter.Permanent => Diagnosis.Proof.CodesAfter.Permanent,
        Stated.CodesAfter.Back => Diagnosis.Proof.CodesAfter.Back,
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
