using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>A trade word in plain words.</summary>
/// <param name="Also">Other words owners use for it.</param>
public sealed record Term(Located<string> Means, ImmutableArray<Located<string>> Also);

sealed class TermShape : RecordShape<Term>
{
    readonly Field<Located<string>> means;
    readonly Field<ImmutableArray<Located<string>>> also;

    public TermShape()
    {
        means = Required("means", Scalars.Text, "The word in plain words.");
        also = Optional("also", Collections.Texts, [], "Other words owners use for it.");
    }

    protected override Term Make(RecordValues v) => new(v.Get(means), v.Get(also));
}
