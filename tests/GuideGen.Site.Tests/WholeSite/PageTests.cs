using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>Every page is good HTML and well built. Rules: WHATWG HTML Living Standard, and WCAG 2.2 (1.3.1, 2.4.2, 3.1.1).</summary>
public sealed class PageTests
{
    static readonly string[] Pointers = ["aria-labelledby", "aria-describedby", "for"];

    public static TheoryData<string> All => [Guides.Small, Guides.Demo, Guides.Hostile, Guides.Published];

    [Theory, MemberData(nameof(All))]
    public void Every_page_parses_without_an_error(string guide)
    {
        var site = CompiledSite.Of(guide);
        var strict = new HtmlParser(new HtmlParserOptions { IsStrictMode = true });

        Assert.All(site.Pages.Keys, address => strict.ParseDocument(site.Text(address)));
    }

    [Theory, MemberData(nameof(All))]
    public void Every_page_has_one_main_heading_and_skips_no_level(string guide) => Hold(guide, page =>
    {
        var levels = page.Document.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.LocalName[1] - '0').ToList();
        return levels.Count(l => l == 1) == 1 && levels[0] == 1 && levels.Zip(levels.Skip(1)).All(p => p.Second <= p.First + 1);
    });

    [Theory, MemberData(nameof(All))]
    public void Every_id_stands_once_on_its_page_and_has_no_blank(string guide) => Hold(guide, page =>
    {
        var ids = page.Document.QuerySelectorAll("[id]").Select(e => e.Id!).ToList();
        return ids.Count == ids.Distinct().Count() && ids.All(id => id.Length > 0 && !id.Any(char.IsWhiteSpace));
    });

    [Theory, MemberData(nameof(All))]
    public void Every_page_says_its_language(string guide)
    {
        var language = CompiledSite.Of(guide).Guide.Settings.Language.Value;

        Hold(guide, page => page.Document.DocumentElement.GetAttribute("lang") == language);
    }

    [Theory, MemberData(nameof(All))]
    public void No_two_pages_have_the_same_title(string guide) =>
        Assert.Empty(CompiledSite.Of(guide).Pages.Values.GroupBy(p => p.Document.Title).Where(g => g.Count() > 1 || string.IsNullOrWhiteSpace(g.Key)).SelectMany(g => g.Select(p => $"{p.Address}: {g.Key}")));

    [Theory, MemberData(nameof(All))]
    public void No_page_carries_script_or_style_of_its_own(string guide) => Hold(guide, page =>
        !page.Document.All.Any(e => e.LocalName == "style" || (e.LocalName == "script" && !e.HasAttribute("src") && e.GetAttribute("type") != "application/ld+json") || e.Attributes.Any(IsScriptOrStyle)));

    [Theory, MemberData(nameof(All))]
    public void Every_label_and_description_points_at_something_on_the_page(string guide) => Hold(guide, page =>
        page.Document.All
            .SelectMany(e => Pointers.Select(a => e.GetAttribute(a)).OfType<string>())
            .SelectMany(v => v.Split(' '))
            .All(id => page.Document.GetElementById(id) is not null));

    static bool IsScriptOrStyle(IAttr attribute) =>
        attribute.Name == "style"
        || attribute.Name.StartsWith("on", StringComparison.Ordinal)
        || attribute.Value.TrimStart().StartsWith("javascript:", StringComparison.OrdinalIgnoreCase);

    static void Hold(string guide, Func<SitePage, bool> rule) =>
        Assert.Empty(CompiledSite.Of(guide).Pages.Values.Where(p => !rule(p)).Select(p => p.Address));
}
