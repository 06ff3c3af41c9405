using System.Collections.Immutable;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What <c>site-config.yml</c> says.</summary>
/// <param name="Language">Language tag (BCP 47) of the pages.</param>
/// <param name="Summary">One sentence for the home page and for search engines.</param>
/// <param name="Units">The units that readers of the guide think in; the others stand beside them.</param>
public sealed record SiteSettings(Located<string> Title, Located<string> Language, Located<string> Summary, Located<UnitSystem> Units)
{
    /// <summary>The other languages in which pages of the guide may stand, each an edition of its own.</summary>
    public ImmutableArray<Located<string>> AlsoIn { get; init; } = [];

    /// <summary>Where the site will stand: http or https, ending in a slash. Null for a site that does not know.</summary>
    public Located<Uri>? Base { get; init; }

    /// <summary>The HTML elements that pages may use; none unless listed.</summary>
    public ImmutableArray<Located<string>> Html { get; init; } = [];

    /// <summary>How much findings weigh in this guide, where that differs from the rule book; the last one that covers a finding counts.</summary>
    public ImmutableArray<RuleWeight> Weights { get; init; } = [];

    /// <summary>After how many months a page has to be read through again; null if the guide does not ask for it.</summary>
    public Located<int>? ReviewMonths { get; init; }

    /// <summary>The address at which a file of the guide can be edited, with {path} for the file; null for none.</summary>
    public Located<string>? ImproveLink { get; init; }

    /// <summary>Who may copy the texts and photos, and under which terms, in a sentence or two; null if the guide does not say.</summary>
    public Located<string>? Rights { get; init; }

    /// <summary>The settings of another edition, which stands in a folder of its own within the site.</summary>
    /// <param name="language">One of <see cref="AlsoIn"/>.</param>
    public SiteSettings For(string language) => this with
    {
        Language = AlsoIn.First(l => l.Value == language),
        Base = Base is { } root ? root with { Value = new Uri(root.Value, language + "/") } : null,
    };
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
    readonly Field<Located<UnitSystem>> units;
    readonly Field<ImmutableArray<Located<string>>> alsoIn;
    readonly Field<Located<Uri>?> @base;
    readonly Field<ImmutableArray<Located<string>>> html;
    readonly Field<ImmutableArray<RuleWeight>> weights;
    readonly Field<Located<int>?> reviewMonths;
    readonly Field<Located<string>?> improveLink;
    readonly Field<Located<string>?> rights;

    public SiteSettingsShape()
    {
        title = Required("title", Scalars.Text, "The name of the guide.");
        language = Required("language", Tag, "The language of the pages, such as en-GB.");
        summary = Required("summary", Scalars.Text, "One sentence about the guide.");
        units = Optional("units", UnitSystems, default, "Which units stand first, metric or imperial; the others stand beside them. Metric if left out.");
        alsoIn = Optional("also-in", Collections.ListOf(Tag), [], "Further languages in which there are pages, such as de for those in files like x.de.md.");
        @base = Optional("base", Maybe.Of(SiteBase), null, "Where the site will stand, such as https://example.org/guide/.");
        html = Optional("html", Collections.ListOf(PlainHtml.Element), [], "HTML elements that pages may use beside Markdown, such as kbd; leave it out for none.");
        weights = Optional("rules", Collections.ListOf(new RuleWeightShape()), [], "Rules whose findings weigh more or less in this guide, each with a reason.");
        reviewMonths = Optional("review-months", Maybe.Of(Scalars.Whole(1, 240)), null, "After how many months a page has to be read through again.");
        improveLink = Optional("improve-link", Maybe.Of(EditAddress), null, "Where readers can edit a page; {path} stands for its file.");
        rights = Optional("rights", Maybe.Of(Scalars.Text), null, "Who may copy the texts and photos, and under which terms, in a sentence or two.");
    }

    static Shape<Located<UnitSystem>> UnitSystems { get; } = Scalars.Word(("metric", UnitSystem.Metric), ("imperial", UnitSystem.Imperial));

    static Shape<Located<Uri>> SiteBase { get; } = new ScalarShape<Uri>(
        "an address that begins with https:// or http:// and ends in a slash",
        t => (Uri.TryCreate(t, UriKind.Absolute, out var address) && address is { Scheme: "http" or "https", Query: "", Fragment: "", UserInfo: "" } && t.EndsWith('/'), address!),
        """{ "type": "string", "format": "uri", "pattern": "^https?://[^ ?#@]*/$" }""",
        "https://example.org/guide/");

    static Shape<Located<string>> EditAddress { get; } = new ScalarShape<string>(
        "an address that begins with https:// and has {path} in it, such as https://example.org/loris/edit/main/{path}",
        t => (t.StartsWith("https://", StringComparison.Ordinal) && t.Contains("{path}", StringComparison.Ordinal) && Uri.IsWellFormedUriString(t.Replace("{path}", "a", StringComparison.Ordinal), UriKind.Absolute), t),
        """{ "type": "string", "format": "uri-template", "pattern": "^https://[^ ]*\\{path\\}" }""",
        "https://example.org/loris/edit/main/{path}");

    static Shape<Located<string>> Tag { get; } = new ScalarShape<string>(
        "a language tag such as en or en-GB",
        t => (t.Split('-') is { Length: <= 4 } parts && parts[0].Length is 2 or 3 && parts[0].All(char.IsAsciiLetter) && parts.All(p => p.Length is >= 2 and <= 8 && p.All(char.IsAsciiLetterOrDigit)), t),
        """{ "type": "string", "pattern": "^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}$" }""",
        "en-GB");

    protected override SiteSettings Make(RecordValues v) => new(v.Get(title), v.Get(language), v.Get(summary), v.Get(units))
    {
        AlsoIn = v.Get(alsoIn),
        Base = v.Get(@base),
        Html = v.Get(html),
        Weights = v.Get(weights),
        ReviewMonths = v.Get(reviewMonths),
        ImproveLink = v.Get(improveLink),
        Rights = v.Get(rights),
    };
}
