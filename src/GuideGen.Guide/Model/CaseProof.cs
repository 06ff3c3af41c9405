using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What the codes did after the repair.</summary>
public enum CodesAfter
{
    Unread,
    None,
    Pending,
    Permanent,
    Back,
}

/// <summary>Independent evidence that the part was the cause.</summary>
public enum ProofEvidence
{
    None,
    Measured,
    SwappedBack,
}

/// <summary>The facts a case states about its proof; the level follows from them and is not claimed.</summary>
/// <param name="MonitorPasses">Driving cycles in which the monitor that set the code ran to its end and passed.</param>
public sealed record CaseProof(
    bool ShownBefore,
    bool OneChange,
    bool Cleared,
    int MonitorPasses,
    CodesAfter CodesAfter,
    bool SymptomGone,
    FollowUp FollowUp,
    ProofEvidence Evidence);

/// <summary>How long the repair has been watched; the distance in the vehicle's unit.</summary>
public sealed record FollowUp(int Days, double Distance)
{
    public static FollowUp None { get; } = new(0, 0);
}

sealed class ProofShape : RecordShape<CaseProof>
{
    readonly Field<Located<bool>> shownBefore;
    readonly Field<Located<bool>> oneChange;
    readonly Field<Located<bool>> cleared;
    readonly Field<Located<int>> monitorPasses;
    readonly Field<Located<CodesAfter>> codesAfter;
    readonly Field<Located<bool>> symptomGone;
    readonly Field<FollowUp> followUp;
    readonly Field<Located<ProofEvidence>> evidence;

    public ProofShape()
    {
        shownBefore = Optional("shown-before", Scalars.Flag, default, "A check showed the fault before the repair.");
        oneChange = Optional("one-change", Scalars.Flag, default, "Only one thing was changed.");
        cleared = Optional("cleared", Scalars.Flag, default, "The codes were cleared afterwards.");
        monitorPasses = Optional("monitor-passes", Scalars.Whole(0, 1_000), default, "Driving cycles in which the monitor ran and passed.");
        codesAfter = Optional("codes-after", CodesAfterWords, default, "What the codes did afterwards.");
        symptomGone = Optional("symptom-gone", Scalars.Flag, default, "The symptom has gone.");
        followUp = Optional("follow-up", new FollowUpShape(), FollowUp.None, "How long it has been watched.");
        evidence = Optional("evidence", EvidenceWords, default, "Evidence apart from the code: a measured defect, or the fault back with the old part.");
    }

    static Shape<Located<CodesAfter>> CodesAfterWords { get; } = Scalars.Word(
        ("unread", CodesAfter.Unread),
        ("none", CodesAfter.None),
        ("pending", CodesAfter.Pending),
        ("permanent", CodesAfter.Permanent),
        ("back", CodesAfter.Back));

    static Shape<Located<ProofEvidence>> EvidenceWords { get; } = Scalars.Word(
        ("none", ProofEvidence.None), ("measured", ProofEvidence.Measured), ("swapped-back", ProofEvidence.SwappedBack));

    protected override CaseProof Make(RecordValues v) => new(
        v.Get(shownBefore).Value,
        v.Get(oneChange).Value,
        v.Get(cleared).Value,
        v.Get(monitorPasses).Value,
        v.Get(codesAfter).Value,
        v.Get(symptomGone).Value,
        v.Get(followUp),
        v.Get(evidence).Value);
}

sealed class FollowUpShape : RecordShape<FollowUp>
{
    readonly Field<Located<int>> days;
    readonly Field<Located<double>> distance;

    public FollowUpShape()
    {
        days = Optional("days", Scalars.Whole(0, 10_000), default, "Days without the fault.");
        distance = Optional("distance", Scalars.Number(0, 1_000_000), default, "Distance without the fault.");
    }

    protected override FollowUp Make(RecordValues v) => new(v.Get(days).Value, v.Get(distance).Value);
}
