using AngleSharp.Dom;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>One guide with a page for each attack: what could act is an error, and all else is drawn as text.</summary>
public sealed class HostileMarkdownTests
{
    static readonly string[] MarkdownMakes = ["a", "blockquote", "br", "code", "em", "h3", "h4", "h5", "h6", "hr", "img", "li", "ol", "p", "pre", "strong", "table", "tbody", "td", "th", "thead", "tr", "ul", "div"];

    static readonly string[] Addresses = ["href", "src", "srcset", "action", "formaction", "data", "poster", "xlink:href", "ping"];

    static readonly ILookup<string, string> Errors = ErrorsByPage();

    static readonly CompiledSite Site = CompiledSite.Compile(GuideOf(i => !Errors[PathOf(i)].Any()), 2);

    /// <summary>A page of the same kind on which nothing is attempted.</summary>
    static readonly SitePage Plain = Site.Pages["parts/charge-air-hose.html"];

    public static TheoryData<int> All => [.. Enumerable.Range(0, HostileMarkdown.Rows.Length)];

    public static TheoryData<int> Drawn => [.. Enumerable.Range(0, HostileMarkdown.Rows.Length).Where(i => HostileMarkdown.Rows[i].Rules.Length == 0)];

    [Theory, MemberData(nameof(All))]
    public void A_page_meets_the_errors_that_are_listed(int row)
    {
        var (text, rules) = HostileMarkdown.Rows[row];

        Assert.Equal((text, rules), (text, string.Join(", ", Errors[PathOf(row)].Distinct())));
    }

    [Theory, MemberData(nameof(Drawn))]
    public void A_page_that_is_drawn_has_nothing_that_acts_or_hides(int row)
    {
        var page = Site.Pages[$"parts/n{row}.html"].Document;

        Assert.Empty(page.All.Select(e => e.LocalName).Except([.. Plain.Document.All.Select(e => e.LocalName), .. MarkdownMakes]));
        Assert.Empty(page.All.SelectMany(e => e.Attributes).Where(IsBad).Select(a => $"{a.Name}={a.Value}"));
        Assert.Empty(page.QuerySelectorAll("main section *").Where(e => Reaches(e)).Select(e => e.OuterHtml));
        Assert.Equal(Frame(Plain.Document), Frame(page));
    }

    static bool IsBad(IAttr attribute) =>
        attribute.Name.StartsWith("on", StringComparison.Ordinal) || attribute.Name is "style" or "srcdoc" or "hidden" or "name"
            ? !Plain.Document.All.Any(e => e.GetAttribute(attribute.Name) == attribute.Value)
            : Addresses.Contains(attribute.Name) && Scheme(attribute.Value) is not ("" or "https" or "http" or "mailto");

    /// <summary>What a browser takes for a scheme: it first drops controls and blanks (URL Living Standard, 4.4).</summary>
    static string Scheme(string address)
    {
        var read = string.Concat(address.Where(c => c > ' '));
        return read.StartsWith("//", StringComparison.Ordinal) ? "//" : read.Split('/', '#', '?')[0] is var head && head.Contains(':', StringComparison.Ordinal) ? head.Split(':')[0].ToLowerInvariant() : "";
    }

    /// <summary>A class of the theme's, or an id that the frame or a script knows.</summary>
    static bool Reaches(IElement element) =>
        element.ClassList.Any(c => c is not ("code" or "term" or "scroller" or "align-centre") && !c.StartsWith("language-", StringComparison.Ordinal))
        || element.Id is ['_', ..] or "GuideGen";

    static string Frame(IDocument page) => string.Join('\n', page.QuerySelectorAll("head > link, head > meta[http-equiv], header, footer, script").Select(e => e.OuterHtml));

    static string PathOf(int row) => $"content/parts/n{row}.md";

    static Overlay GuideOf(Func<int, bool> isWanted)
    {
        var guide = new Overlay(Guides.Open(Guides.Small));
        for (var i = 0; i < HostileMarkdown.Rows.Length; i++)
        {
            if (!isWanted(i)) continue;
            guide.Put(PathOf(i), $"---\nname: Number {i}\nsummary: A part.\nsystem: air\nwhere: Left\n---\n## Where it sits\n\nThere.\n\n## What it does\n\n{HostileMarkdown.Rows[i].Text}\n\n## How it fails\n\nSlowly.\n");
        }

        return guide;
    }

    static ILookup<string, string> ErrorsByPage() =>
        GuideInspector.Inspect(GuideLoader.Load(GuideOf(_ => true)), new DateOnly(2026, 6, 1)).Where(f => f.Severity == Severity.Error).ToLookup(f => f.Span.Path, f => f.Rule.Id);
}
