using System.Collections.Immutable;
using GuideGen.Guide.Hazards;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>The shape of every kind of file: what the loader reads with, and what schemas, drafts and help are made from.</summary>
public static class GuideShapes
{
    public static Shape<SiteSettings> Settings { get; } = new SiteSettingsShape();

    public static Shape<Vehicle> Vehicle { get; } = new VehicleShape();

    public static Shape<ImmutableArray<KeyValuePair<Located<string>, Hazard>>> Hazards { get; } = HazardBook.Shape;

    public static Shape<ImmutableArray<KeyValuePair<Located<string>, Term>>> Terms { get; } = Collections.MapOf(Scalars.Text, new TermShape());

    public static Shape<Fault> Fault { get; } = new FaultShape();

    public static Shape<Check> Check { get; } = new CheckShape();

    public static Shape<Symptom> Symptom { get; } = new SymptomShape();

    public static Shape<Part> Part { get; } = new PartShape();

    public static Shape<HowTo> Task { get; } = new HowToShape();

    public static Shape<CodePage> Code { get; } = new CodePageShape();

    public static Shape<Tree> Tree { get; } = new TreeShape();

    public static Shape<SolvedCase> Case { get; } = new CaseShape();

    public static RecordOutline Of(ContentKind kind) => (RecordOutline)(kind switch
    {
        ContentKind.Fault => Fault.Outline,
        ContentKind.Check => Check.Outline,
        ContentKind.Symptom => Symptom.Outline,
        ContentKind.Part => Part.Outline,
        ContentKind.Task => Task.Outline,
        ContentKind.Code => Code.Outline,
        ContentKind.Tree => Tree.Outline,
        ContentKind.Case => Case.Outline,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    });

    /// <summary>By what the files are called: the kinds of content, and the four files that stand once.</summary>
    public static ImmutableArray<(string Name, Outline Outline)> All { get; } =
    [
        .. Enum.GetValues<ContentKind>().Select(k => (NameKinds.Word(k), (Outline)Of(k))),
        ("site-config", Settings.Outline),
        ("vehicle", Vehicle.Outline),
        ("hazards", Hazards.Outline),
        ("terms", Terms.Outline),
    ];
}
