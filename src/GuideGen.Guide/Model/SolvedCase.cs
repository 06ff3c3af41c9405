using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>How a code stood when the owner read it.</summary>
public enum CodeState
{
    Unknown,
    Pending,
    Confirmed,
    Permanent,
    History,
}

/// <summary>Which control units were asked for codes: what they did not report is then absent.</summary>
public enum CodeScan
{
    /// <summary>Not stated, so that no code is absent.</summary>
    Unknown,

    /// <summary>The engine's, which is what the simplest readers ask.</summary>
    Engine,

    All,
}

/// <summary>One owner's report of a solved fault. What is not named is unknown, never absent.</summary>
/// <param name="Distance">In the vehicle's distance unit.</param>
/// <param name="Checks">Outcomes seen, by check.</param>
/// <param name="Freeze">Values stored with the code, as the reader showed them.</param>
public sealed record SolvedCase(
    PageOrigin Origin,
    Located<DateOnly> Date,
    Located<string> Variant,
    Located<double> Distance,
    ImmutableArray<KeyValuePair<Located<TroubleCode>, Located<CodeState>>> Codes,
    CaseSymptoms Symptoms,
    ImmutableArray<KeyValuePair<Located<string>, Located<string>>> Checks,
    ImmutableArray<KeyValuePair<Located<string>, Located<string>>> Freeze,
    Located<string> Found,
    CaseWork Work,
    CaseProof Proof,
    Located<string>? Note)
{
    public CodeScan Scan { get; init; }

    /// <summary>How well its sender thinks it is proved; null where he does not say. Nothing counts by it.</summary>
    public Located<ProofLevel>? Level { get; init; }

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    /// <summary>True where the code was looked for: then it was there, or it was not.</summary>
    public bool WasRead(TroubleCode code) => Scan == CodeScan.All || (Scan == CodeScan.Engine && code.Letter == 'P') || Codes.Any(c => c.Key.Value == code);
}

public sealed record CaseSymptoms(ImmutableArray<Located<string>> Present, ImmutableArray<Located<string>> Absent)
{
    public static CaseSymptoms None { get; } = new([], []);
}

/// <summary>What was done, in vain and at last.</summary>
/// <param name="Minutes">Own work until the fault was gone, failed attempts included.</param>
/// <param name="Spend">In the guide's currency, failed attempts included.</param>
public sealed record CaseWork(
    ImmutableArray<Located<string>> Changed,
    ImmutableArray<FailedAttempt> Tried,
    Located<double>? Minutes,
    Located<double>? Spend);

/// <summary>Something that was done and did not help.</summary>
public sealed record FailedAttempt(Located<string> What, Located<string>? Part, Located<double>? Minutes, Located<double>? Spend);

sealed class CaseShape : RecordShape<SolvedCase>
{
    static readonly Shape<Located<CodeState>> States = Scalars.Word(
        ("unknown", CodeState.Unknown),
        ("pending", CodeState.Pending),
        ("confirmed", CodeState.Confirmed),
        ("permanent", CodeState.Permanent),
        ("history", CodeState.History));

    static readonly Shape<Located<CodeScan>> Scans = Scalars.Word(("unknown", CodeScan.Unknown), ("engine", CodeScan.Engine), ("all", CodeScan.All));

    static readonly Shape<Located<ProofLevel>> Levels = Scalars.Word(CaseProofs.Words);

    readonly Field<Located<DateOnly>> date;
    readonly Field<Located<string>> variant;
    readonly Field<Located<double>> distance;
    readonly Field<ImmutableArray<KeyValuePair<Located<TroubleCode>, Located<CodeState>>>> codes;
    readonly Field<Located<CodeScan>> scan;
    readonly Field<CaseSymptoms> symptoms;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> checks;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> freeze;
    readonly Field<Located<string>> found;
    readonly Field<ImmutableArray<Located<string>>> changed;
    readonly Field<ImmutableArray<FailedAttempt>> tried;
    readonly Field<Located<double>?> minutes;
    readonly Field<Located<double>?> spend;
    readonly Field<CaseProof> proof;
    readonly Field<Located<ProofLevel>?> level;
    readonly Field<Located<string>?> note;
    readonly Field<ImmutableArray<Dismissal>> dismissals;

    public CaseShape()
    {
        date = Required("date", Scalars.Date, "When the fault was found.");
        variant = Required("variant", Scalars.Name(NameKind.Variant), "Which variant it was.");
        distance = Required("distance", Scalars.Number(0, 3_000_000), "Distance on the clock.");
        codes = Optional("codes", Collections.NamedOf(Scalars.Code, States), [], "The codes that were read, and how they stood.");
        scan = Optional("scan", Scans, default, "Which control units were asked for codes, if it is known: a code that they did not report was not there.");
        symptoms = Optional("symptoms", new CaseSymptomsShape(), CaseSymptoms.None, "What was noticed, and what was looked for and not there.");
        checks = Optional("checks", Collections.NamedOf(Scalars.Name(NameKind.Check), Scalars.Text), [], "Checks that were done, with their outcomes.");
        freeze = Optional("freeze", Collections.MapOf(Scalars.Text, Scalars.Text), [], "Values stored with the code.");
        found = Required("found", Scalars.Name(NameKind.Fault), "The fault it was.");
        changed = Optional("changed", Collections.Texts, [], "What was changed when it helped.");
        tried = Optional("tried", Collections.ListOf(new FailedAttemptShape()), [], "What was done before and did not help.");
        minutes = Optional("minutes", Maybe.Of(Scalars.Number(0, 100_000)), null, "Minutes of own work in all.");
        spend = Optional("spend", Maybe.Of(Scalars.Number(0, 1_000_000)), null, "Money spent in all.");
        proof = Required("proof", new ProofShape(), "The facts that show it is solved.");
        level = Optional("level", Maybe.Of(Levels), null, "How well you think it is proved. What counts is worked out from the facts under proof.");
        note = Optional("note", Maybe.Of(Scalars.Text), null, "A sentence or two in the owner's words.");
        dismissals = Optional("dismiss", Collections.ListOf(new DismissalShape()), [], "Findings that do not hold here, each with a reason.");
    }

    protected override SolvedCase Make(RecordValues v)
    {
        var work = new CaseWork(v.Get(changed), v.Get(tried), v.Get(minutes), v.Get(spend));
        return new SolvedCase(
            v.Origin, v.Get(date), v.Get(variant), v.Get(distance), v.Get(codes), v.Get(symptoms), v.Get(checks), v.Get(freeze), v.Get(found), work, v.Get(proof), v.Get(note))
        {
            Scan = v.Get(scan).Value,
            Level = v.Get(level),
            Dismissals = v.Get(dismissals),
        };
    }
}

sealed class CaseSymptomsShape : RecordShape<CaseSymptoms>
{
    readonly Field<ImmutableArray<Located<string>>> present;
    readonly Field<ImmutableArray<Located<string>>> absent;

    public CaseSymptomsShape()
    {
        present = Optional("present", Collections.Names(NameKind.Symptom), [], "Noticed.");
        absent = Optional("absent", Collections.Names(NameKind.Symptom), [], "Looked for and not there.");
    }

    protected override CaseSymptoms Make(RecordValues v) => new(v.Get(present), v.Get(absent));
}

sealed class FailedAttemptShape : RecordShape<FailedAttempt>
{
    readonly Field<Located<string>> what;
    readonly Field<Located<string>?> part;
    readonly Field<Located<double>?> minutes;
    readonly Field<Located<double>?> spend;

    public FailedAttemptShape()
    {
        what = Required("what", Scalars.Text, "What was done.");
        part = Optional("part", Maybe.Of(Scalars.Name(NameKind.Part)), null, "The part that was changed in vain.");
        minutes = Optional("minutes", Maybe.Of(Scalars.Number(0, 100_000)), null, "Minutes it took.");
        spend = Optional("spend", Maybe.Of(Scalars.Number(0, 1_000_000)), null, "Money it cost.");
    }

    protected override FailedAttempt Make(RecordValues v) => new(v.Get(what), v.Get(part), v.Get(minutes), v.Get(spend));
}
