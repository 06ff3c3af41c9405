using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Model;

/// <summary>What flows or acts along a row of parts.</summary>
public enum FlowPath
{
    IntakeAir,
    Exhaust,
    Recirculation,
    Reductant,
    Fuel,
    Coolant,
    Current,
    Signals,
    CabinAir,
    DriveLine,
    Brakes,
}

/// <summary>A component: where it sits, what it does, how it fails.</summary>
/// <param name="Where">Where it sits, in one sentence.</param>
/// <param name="Also">Other names for it.</param>
public sealed record Part(
    PageOrigin Origin,
    Located<string> Name,
    Located<string> Summary,
    Located<string> System,
    Located<string> Where,
    ImmutableArray<Located<string>> Also) : IGuideEntry
{
    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    /// <summary>The path of the vehicle it sits in; null for a part that stands in none.</summary>
    public Located<FlowPath>? Path { get; init; }

    /// <summary>The parts that come just before it in its path, or hand over to it from another.</summary>
    public ImmutableArray<Located<string>> After { get; init; } = [];

    /// <summary>The part that is fitted in its place today; null while it is current.</summary>
    public Located<string>? SupersededBy { get; init; }

    public required Provenance Provenance { get; init; }
}

sealed class PartShape : EntryShape<Part>
{
    readonly Field<Located<string>> system;
    readonly Field<Located<string>> where;
    readonly Field<ImmutableArray<Located<string>>> also;
    readonly Field<Located<FlowPath>?> path;
    readonly Field<ImmutableArray<Located<string>>> after;
    readonly Field<Located<string>?> supersededBy;

    public PartShape()
    {
        system = Required("system", Scalars.Name(NameKind.System), "The system of the vehicle it belongs to.");
        where = Required("where", Scalars.Text, "Where it sits, in one sentence.");
        also = Optional("also", Collections.Texts, [], "Other names for it.");
        path = Optional("path", Maybe.Of(PathWords), null, "The path it sits in, which puts it on the map.");
        after = Optional("after", Collections.Names(NameKind.Part), [], "The parts just before it in that path.");
        supersededBy = Optional("superseded-by", Maybe.Of(Scalars.Name(NameKind.Part)), null, "The part that is fitted in its place today.");
    }

    static Shape<Located<FlowPath>> PathWords { get; } = Scalars.Word(
        ("intake-air", FlowPath.IntakeAir), ("exhaust", FlowPath.Exhaust), ("recirculation", FlowPath.Recirculation), ("reductant", FlowPath.Reductant), ("fuel", FlowPath.Fuel),
        ("coolant", FlowPath.Coolant), ("current", FlowPath.Current), ("signals", FlowPath.Signals), ("cabin-air", FlowPath.CabinAir), ("drive-line", FlowPath.DriveLine), ("brakes", FlowPath.Brakes));

    protected override string Conditions => """
        [{ "if": { "required": ["after"] }, "then": { "required": ["path"] } }]
        """;

    public override bool TryRead(YamlNode node, Binding binding, out Part value)
    {
        if (!base.TryRead(node, binding, out value)) return false;
        if (value is { Path: null, After: [var first, ..] }) binding.Findings.Add(Rules.KeyContext.At(first.Span, "after", "parts with 'path'"));
        return true;
    }

    protected override Part Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(system), v.Get(where), v.Get(also))
        {
            Variants = v.Get(Variants),
            Dismissals = v.Get(Dismissals),
            Path = v.Get(path),
            After = v.Get(after),
            SupersededBy = v.Get(supersededBy),
            Provenance = ProvenanceOf(v),
        };
}
