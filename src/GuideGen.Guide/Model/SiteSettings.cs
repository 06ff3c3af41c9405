using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What <c>site-config.yml</c> says.</summary>
/// <param name="Language">Language tag (BCP 47) of the pages.</param>
/// <param name="Summary">One sentence for the home page and for search engines.</param>
/// <param name="Units">The units that readers of the guide think in; the others stand beside them.</param>
public sealed record SiteSettings(Located<string> Title, Located<string> Language, Located<string> Summary, Located<UnitSystem> Units)
{
    /// <summary>Where the site will stand: http or https, ending in a slash. Null for a site that does not know.</summary>
    public Located<Uri>? Base { get; init; }
}

/// <summary>The unit system whose values are shown first.</summary>
public enum UnitSystem
{
    Metric,
    Imperial,
}

sealed class SiteSettingsShape : RecordShape<SiteSettings>
{
    readonly Field<Located<string>> title;
    readonly Field<Located<string>> language;
    readonly Field<Located<string>> summary;
    readonly Field<Located<Uri>?> @base;
    readonly Field<Located<UnitSystem>> units;

    public SiteSettingsShape()
    {
        title = Required("title", Scalars.Text, "The name of the guide.");
        language = Required("language", Tag, "The language of the pages, such as en-GB.");
        summary = Required("summary", Scalars.Text, "One sentence about the guide.");
        @base = Optional("base", Maybe.Of(SiteBase), null, "Where the site will stand, such as https://example.org/guide/.");
        units = Optional("units", UnitSystems, default, "Which units stand first, metric or imperial; the others stand beside them. Metric if left out.");
    }

    static Shape<Located<UnitSystem>> UnitSystems { get; } = Scalars.Word(("metric", UnitSystem.Metric), ("imperial", UnitSystem.Imperial));

    static Shape<Located<string>> Tag { get; } = new ScalarShape<string>(
        "a language tag such as en or en-GB",
        t => (t.Split('-') is { Length: <= 4 } parts && parts[0].Length is 2 or 3 && parts.All(p => p.Length is >= 2 and <= 8 && p.All(char.IsAsciiLetterOrDigit)), t));

    static Shape<Located<Uri>> SiteBase { get; } = new ScalarShape<Uri>(
        "an address that begins with https:// or http:// and ends in a slash",
        t => (Uri.TryCreate(t, UriKind.Absolute, out var address) && address is { Scheme: "http" or "https", Query: "", Fragment: "", UserInfo: "" } && t.EndsWith('/'), address!));

    protected override SiteSettings Make(RecordValues v) => new(v.Get(title), v.Get(language), v.Get(summary), v.Get(units)) { Base = v.Get(@base) };
}
