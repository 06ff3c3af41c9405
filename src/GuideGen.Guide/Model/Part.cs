using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

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

    /// <summary>The part that is fitted in its place today; null while it is current.</summary>
    public Located<string>? SupersededBy { get; init; }

    public required Provenance Provenance { get; init; }
}

sealed class PartShape : EntryShape<Part>
{
    readonly Field<Located<string>> system;
    readonly Field<Located<string>> where;
    readonly Field<ImmutableArray<Located<string>>> also;
    readonly Field<Located<string>?> supersededBy;

    public PartShape()
    {
        system = Required("system", Scalars.Name(NameKind.System), "The system of the vehicle it belongs to.");
        where = Required("where", Scalars.Text, "Where it sits, in one sentence.");
        also = Optional("also", Collections.Texts, [], "Other names for it.");
        supersededBy = Optional("superseded-by", Maybe.Of(Scalars.Name(NameKind.Part)), null, "The part that is fitted in its place today.");
    }

    protected override Part Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(system), v.Get(where), v.Get(also))
        {
            Variants = v.Get(Variants),
            Dismissals = v.Get(Dismissals),
            SupersededBy = v.Get(supersededBy),
            Provenance = ProvenanceOf(v),
        };
}
