using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>A task: a how-to that many pages need. (Named so because a task means something else in C#.)</summary>
public sealed record HowTo(
    PageOrigin Origin,
    Located<string> Name,
    Located<string> Summary,
    Located<double> Minutes,
    ImmutableArray<Located<string>> Tools,
    ImmutableArray<Located<string>> Parts) : IHandsOnPage
{
    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Located<string>> Hazards { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    public required Provenance Provenance { get; init; }
}

sealed class HowToShape : HandsOnShape<HowTo>
{
    readonly Field<Located<double>> minutes;
    readonly Field<ImmutableArray<Located<string>>> tools;

    public HowToShape()
    {
        minutes = Required("minutes", Scalars.Number(0, 10_000), "How long it takes you.");
        tools = ToolsField();
    }

    protected override HowTo Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(minutes), v.Get(tools), v.Get(Parts))
        {
            Variants = v.Get(Variants),
            Hazards = v.Get(Hazards),
            Dismissals = v.Get(Dismissals),
            Provenance = ProvenanceOf(v),
        };
}
