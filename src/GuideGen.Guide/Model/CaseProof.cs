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
/// <param name="SymptomGone">Null where the case does not say.</param>
/// <param name="Recurrence">For a fault that came and went; else null.</param>
public sealed record CaseProof(
    bool ShownBefore,
    bool OneChange,
    bool Cleared,
    int MonitorPasses,
    CodesAfter CodesAfter,
    bool? SymptomGone,
    FollowUp FollowUp,
    Recurrence? Recurrence,
    ProofEvidence Evidence);

/// <summary>How long the repair has been watched; the distance in the vehicle's unit.</summary>
public sealed record FollowUp(int Days, double Distance)
{
    public static FollowUp None { get; } = new(0, 0);
}

/// <summary>How a fault came and went.</summary>
/// <param name="Share">Of driving cycles in which it used to show, above 0 to 1.</param>
/// <param name="QuietCycles">Driving cycles since the repair without it.</param>
public sealed record Recurrence(double Share, int QuietCycles);

sealed class ProofShape : RecordShape<CaseProof>
{
    readonly Field<Located<bool>> shownBefore;
    readonly Field<Located<bool>> oneChange;
    readonly Field<Located<bool>> cleared;
    readonly Field<Located<int>> monitorPasses;
    readonly Field<Located<CodesAfter>> codesAfter;
    readonly Field<Located<bool>?> symptomGone;
    readonly Field<FollowUp> followUp;
    readonly Field<Recurrence?> recurrence;
    readonly Field<Located<ProofEvidence>> evidence;

    public ProofShape()
    {
        shownBefore = Optional("shown-before", Scalars.Flag, default, "A check showed the fault before the repair.");
        oneChange = Optional("one-change", Scalars.Flag, default, "Only one thing was changed.");
        cleared = Optional("cleared", Scalars.Flag, default, "The codes were cleared afterwards.");
        monitorPasses = Optional("monitor-passes", Scalars.Whole(0, 1_000), default, "Driving cycles in which the monitor ran and passed.");
        codesAfter = Optional("codes-after", CodesAfterWords, default, "What the codes did afterwards.");
        symptomGone = Optional("symptom-gone", Maybe.Of(Scalars.Flag), null, "The symptom has gone; leave it out if nobody can tell yet.");
        followUp = Optional("follow-up", new FollowUpShape(), FollowUp.None, "How long it has been watched.");
        recurrence = Optional("recurrence", new RecurrenceShape(), null, "For a fault that came and went: how often it used to show.");
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
        v.Get(symptomGone)?.Value,
        v.Get(followUp),
        v.Get(recurrence),
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

sealed class RecurrenceShape : RecordShape<Recurrence?>
{
    readonly Field<Located<double>> share;
    readonly Field<Located<int>> quietCycles;

    public RecurrenceShape()
    {
        share = Required("share", Scalars.Number(0.001, 1), "The share of driving cycles in which it used to show, such as 0.25.");
        quietCycles = Optional("quiet-cycles", Scalars.Whole(0, 10_000), default, "Driving cycles since the repair without it.");
    }

    protected override Recurrence? Make(RecordValues v) => new(v.Get(share).Value, v.Get(quietCycles).Value);
}
