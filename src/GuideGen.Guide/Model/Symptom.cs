using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Model;

/// <summary>By which sense an owner notices a symptom, or at which moment.</summary>
public enum Sense
{
    Lamp,
    Starting,
    Driving,
    Feel,
    Hear,
    See,
    Smell,
}

/// <summary>What the owner notices.</summary>
/// <param name="Lamp">How the warning lamp looks, in words; only with <see cref="Sense.Lamp"/>.</param>
/// <param name="Drive">May one drive before the cause is known?</param>
/// <param name="Also">Other words owners use for it.</param>
public sealed record Symptom(
    PageOrigin Origin,
    Located<string> Name,
    Located<string> Summary,
    Located<Sense> Sense,
    Located<string>? Lamp,
    Located<DriveAdvice> Drive,
    ImmutableArray<Located<string>> Also) : IGuideEntry
{
    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    public required Provenance Provenance { get; init; }
}

sealed class SymptomShape : EntryShape<Symptom>
{
    readonly Field<Located<Sense>> sense;
    readonly Field<Located<string>?> lamp;
    readonly Field<Located<DriveAdvice>> drive;
    readonly Field<ImmutableArray<Located<string>>> also;

    public SymptomShape()
    {
        sense = Required("sense", SenseWords, "How it is noticed.");
        lamp = Optional("lamp", Maybe.Of(Scalars.Text), null, "What the lamp looks like, with its colour, in words.");
        drive = Required("drive", DriveWords.Shape, "May the owner drive before the cause is known?");
        also = Optional("also", Collections.Texts, [], "Other words owners use for it.");
    }

    static Shape<Located<Sense>> SenseWords { get; } = Scalars.Word(
        ("lamp", Sense.Lamp), ("starting", Sense.Starting), ("driving", Sense.Driving), ("feel", Sense.Feel), ("hear", Sense.Hear), ("see", Sense.See), ("smell", Sense.Smell));

    protected override string Conditions => """
        [{ "if": { "required": ["lamp"] }, "then": { "properties": { "sense": { "const": "lamp" } } } }]
        """;

    public override bool TryRead(YamlNode node, Binding binding, out Symptom value)
    {
        if (!base.TryRead(node, binding, out value)) return false;
        if (value is { Lamp: { } lamp, Sense.Value: not Sense.Lamp }) binding.Findings.Add(Rules.KeyContext.At(lamp.Span, "lamp", "symptoms with 'sense: lamp'"));
        return true;
    }

    protected override Symptom Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(sense), v.Get(lamp), v.Get(drive), v.Get(also))
        {
            Variants = v.Get(Variants),
            Dismissals = v.Get(Dismissals),
            Provenance = ProvenanceOf(v),
        };
}
