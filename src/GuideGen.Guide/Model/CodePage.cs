using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What a code means on this vehicle: the only place where a maker-controlled code gets its meaning.</summary>
public sealed record CodePage(
    PageOrigin Origin,
    TroubleCode Code,
    Located<string> Meaning,
    Located<string> Summary,
    Located<string>? Module) : IGuideEntry
{
    public Located<string> Name => Meaning;

    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];
}

sealed class CodePageShape : RecordShape<CodePage>
{
    readonly Field<Located<string>> meaning;
    readonly Field<Located<string>> summary;
    readonly Field<Located<string>?> module;
    readonly Field<ImmutableArray<Located<string>>> variants;
    readonly Field<ImmutableArray<Dismissal>> dismissals;

    public CodePageShape()
    {
        meaning = Required("meaning", Scalars.Text, "What the code means on this vehicle.");
        summary = Required("summary", Scalars.Text, "One or two sentences, shown wherever the page is listed.");
        module = Optional("module", Maybe.Of(Scalars.Text), null, "Which control unit stores it.");
        variants = Optional("variants", Collections.Names(NameKind.Variant), [], "The variants it applies to; leave it out for all.");
        dismissals = Optional("dismiss", Collections.ListOf(new DismissalShape()), [], "Findings that do not hold on this page, each with a reason.");
    }

    /// <remarks>The loader has checked that the slug, the file's name, is a code.</remarks>
    protected override CodePage Make(RecordValues v) =>
        new(v.Origin, TroubleCode.Parse(v.Origin.Slug), v.Get(meaning), v.Get(summary), v.Get(module))
        {
            Variants = v.Get(variants),
            Dismissals = v.Get(dismissals),
        };
}
