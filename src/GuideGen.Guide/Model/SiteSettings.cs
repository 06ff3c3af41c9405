using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What <c>site-config.yml</c> says.</summary>
/// <param name="Language">Language tag (BCP 47) of the pages.</param>
/// <param name="Summary">One sentence for the home page and for search engines.</param>
public sealed record SiteSettings(Located<string> Title, Located<string> Language, Located<string> Summary)
{
    /// <summary>How much findings weigh in this guide, where that differs from the rule book; the last one that covers a finding counts.</summary>
    public ImmutableArray<RuleWeight> Weights { get; init; } = [];

    /// <summary>After how many months a page has to be read through again; null if the guide does not ask for it.</summary>
    public Located<int>? ReviewMonths { get; init; }

    /// <summary>The address at which a file of the guide can be edited, with {path} for the file; null for none.</summary>
    public Located<string>? ImproveLink { get; init; }
}

sealed class SiteSettingsShape : RecordShape<SiteSettings>
{
    readonly Field<Located<string>> title;
    readonly Field<Located<string>> language;
    readonly Field<Located<string>> summary;
    readonly Field<ImmutableArray<RuleWeight>> weights;
    readonly Field<Located<int>?> reviewMonths;
    readonly Field<Located<string>?> improveLink;

    public SiteSettingsShape()
    {
        title = Required("title", Scalars.Text, "The name of the guide.");
        language = Required("language", Tag, "The language of the pages, such as en-GB.");
        summary = Required("summary", Scalars.Text, "One sentence about the guide.");
        weights = Optional("rules", Collections.ListOf(new RuleWeightShape()), [], "Rules whose findings weigh more or less in this guide, each with a reason.");
        reviewMonths = Optional("review-months", Maybe.Of(Scalars.Whole(1, 240)), null, "After how many months a page has to be read through again.");
        improveLink = Optional("improve-link", Maybe.Of(EditAddress), null, "Where readers can edit a page; {path} stands for its file.");
    }

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

    protected override SiteSettings Make(RecordValues v) => new(v.Get(title), v.Get(language), v.Get(summary))
    {
        Weights = v.Get(weights),
        ReviewMonths = v.Get(reviewMonths),
        ImproveLink = v.Get(improveLink),
    };
}
