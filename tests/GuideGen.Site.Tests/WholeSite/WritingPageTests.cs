using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Drafting;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>What the site says to those who write for it.</summary>
public sealed partial class WritingPageTests
{
    static readonly CompiledSite Site = CompiledSite.Of(Guides.Small);

    public static TheoryData<ContentKind> Kinds => new(Enum.GetValues<ContentKind>());

    [Fact]
    public void Every_rule_stands_on_the_page_of_rules_with_a_bad_and_a_good_example()
    {
        var page = Site.Pages["rules.html"].Document;

        Assert.All(Rules.All, r =>
        {
            var rule = page.GetElementById(r.Id)!;
            Assert.NotEmpty(rule.QuerySelectorAll(".written-bad"));
            Assert.NotEmpty(rule.QuerySelectorAll(".written-good"));
            Assert.Contains(r.Title, rule.TextContent, StringComparison.Ordinal);
        });
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Every_key_that_the_loader_reads_is_explained_and_the_example_is_of_the_starter(ContentKind kind)
    {
        var page = Site.Pages[$"writing/{NameKinds.Word(kind)}.html"].Document;
        var keys = page.QuerySelectorAll(".keys dt > code").Select(c => c.TextContent).ToList();

        Assert.Empty(GuideShapes.Of(kind).Fields.Select(f => f.Key).Except(keys));
        Assert.Contains(StarterGuide.Files.Values, t => t == page.QuerySelector(".written figcaption + pre code")!.TextContent);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_draft_lists_its_keys_in_the_order_in_which_they_are_explained(ContentKind kind)
    {
        var guide = GuideLoader.Load(Guides.Open(Guides.Small)).Guide;
        var drafted = PageDraft.Write(kind, new Dictionary<string, string>(), guide).Split('\n').Select(l => KeyLine().Match(l)).Where(m => m.Success).Select(m => m.Groups[1].Value);
        var explained = Site.Pages[$"writing/{NameKinds.Word(kind)}.html"].Document.QuerySelectorAll(".keys dt").Where(d => d.FirstElementChild!.LocalName == "code").Select(d => d.FirstElementChild!.TextContent);

        Assert.Equal(explained, drafted);
    }

    /// <summary>A key of the page itself, taken or behind its sign.</summary>
    [GeneratedRegex("^(?:# (?!yaml-language-server))?([a-z-]+):(?: |$)")]
    private static partial Regex KeyLine();

    [Fact]
    public void A_case_that_came_as_a_file_is_filed_as_its_page_says() =>
        Assert.Contains("guidegen draft case --from", Site.Pages["writing/case.html"].Document.Body!.TextContent, StringComparison.Ordinal);

    [Fact]
    public void A_key_of_likelihoods_says_what_each_word_counts()
    {
        var codes = Site.Pages["writing/fault.html"].Document.QuerySelectorAll(".keys > div").Single(d => d.QuerySelector("dt > code")!.TextContent == "codes");

        Assert.Contains("These count: always as 0.95, usually as 0.75, sometimes as 0.35, rarely as 0.08.", codes.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trade_word_is_linked_where_a_page_uses_it_first_and_only_there()
    {
        var guide = new Overlay(Guides.Open(Guides.Small))
            .Replace("content/terms.yml", "boost:", "underboost: { means: Too little pressure. }\nboost:")
            .Append("content/parts/charge-air-hose.md", "\nBoost is air. More boost, more air: `boost`.\n");

        var page = CompiledSite.Compile(guide, 1).Pages["parts/charge-air-hose.html"].Document;

        var link = Assert.Single(page.QuerySelectorAll("a.term[href='../terms.html#boost']"));
        Assert.Equal("boost", link.TextContent, ignoreCase: true);
    }

    [Fact]
    public void Improve_this_page_leads_to_the_file_by_the_pattern_of_the_guide()
    {
        var guide = new Overlay(Guides.Open(Guides.Small)).Append("site-config.yml", "\nimprove-link: https://example.org/loris/edit/main/{path}\n");

        var site = CompiledSite.Compile(guide, 1);

        var links = site.Pages.ToDictionary(p => p.Key, p => p.Value.Document.QuerySelectorAll("a").FirstOrDefault(a => a.TextContent == "Improve this page")?.GetAttribute("href"));
        Assert.Equal("https://example.org/loris/edit/main/content/parts/charge-air-hose.md", links["parts/charge-air-hose.html"]);
        Assert.Null(links["index.html"]);
        Assert.Null(Site.Pages["parts/charge-air-hose.html"].Document.QuerySelectorAll("a").FirstOrDefault(a => a.TextContent == "Improve this page"));
    }
}
