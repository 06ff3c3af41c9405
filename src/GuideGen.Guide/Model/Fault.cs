using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>One root cause: one page.</summary>
/// <param name="Codes">How likely the fault sets each code.</param>
/// <param name="Symptoms">How likely the owner notices each symptom.</param>
/// <param name="Belief">The author's own opinion of how common it is, in equivalent cases.</param>
public sealed record Fault(
    PageOrigin Origin,
    Located<string> Name,
    Located<string> Summary,
    Located<string> System,
    ImmutableArray<KeyValuePair<Located<TroubleCode>, Located<Likelihood>>> Codes,
    ImmutableArray<KeyValuePair<Located<string>, Located<Likelihood>>> Symptoms,
    ImmutableArray<Located<string>> Parts,
    ImmutableArray<Located<string>> Checks,
    Located<double> Belief,
    Located<DriveAdvice> Drive,
    Repair Repair) : IHandsOnPage
{
    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Located<string>> Hazards { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    public required Provenance Provenance { get; init; }

    public ImmutableArray<Located<string>> Tools => Repair.Tools;
}

sealed class FaultShape : HandsOnShape<Fault>
{
    readonly Field<Located<string>> system;
    readonly Field<ImmutableArray<KeyValuePair<Located<TroubleCode>, Located<Likelihood>>>> codes;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<Likelihood>>>> symptoms;
    readonly Field<ImmutableArray<Located<string>>> checks;
    readonly Field<Located<double>> belief;
    readonly Field<Located<DriveAdvice>> drive;
    readonly Field<Repair> repair;

    public FaultShape()
    {
        system = Required("system", Scalars.Name(NameKind.System), "The system of the vehicle it belongs to.");
        codes = Optional("codes", Collections.NamedOf(Scalars.Code, Scalars.Likelihood), [], "How likely this fault sets each code.");
        symptoms = Required("symptoms", Collections.NamedOf(Scalars.Name(NameKind.Symptom), Scalars.Likelihood, 1), "How likely the owner notices each symptom.");
        checks = Optional("checks", Collections.Names(NameKind.Check), [], "The checks that confirm it, best first.");
        belief = Required("belief", Scalars.Number(0.01, 1_000), "How common you think it is, as a number of cases you would bet on.");
        drive = Required("drive", DriveWords.Shape, "May the owner drive on with it?");
        repair = Required("repair", new RepairShape(), "What putting it right takes.");
    }

    protected override Fault Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(system), v.Get(codes), v.Get(symptoms), v.Get(Parts), v.Get(checks), v.Get(belief), v.Get(drive), v.Get(repair))
        {
            Variants = v.Get(Variants),
            Hazards = v.Get(Hazards),
            Dismissals = v.Get(Dismissals),
            Provenance = ProvenanceOf(v),
        };
}

/// <summary>The words for <see cref="DriveAdvice"/> in front matter.</summary>
public static class DriveWords
{
    public static Shape<Located<DriveAdvice>> Shape { get; } = Scalars.Word(
        ("stop-now", DriveAdvice.StopNow),
        ("to-safety", DriveAdvice.ToSafety),
        ("gently", DriveAdvice.Gently),
        ("no-hurry", DriveAdvice.NoHurry));

    /// <summary>The word as it stands in front matter, which is also the key of the theme's words.</summary>
    public static string Key(DriveAdvice drive) => drive switch
    {
        DriveAdvice.StopNow => "stop-now",
        DriveAdvice.ToSafety => "to-safety",
        DriveAdvice.Gently => "gently",
        DriveAdvice.NoHurry => "no-hurry",
        _ => throw new ArgumentOutOfRangeException(nameof(drive)),
    };
}
