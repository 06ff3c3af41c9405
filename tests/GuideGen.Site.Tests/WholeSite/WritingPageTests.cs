using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Site.Drafting;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>What the site says to those who write for it.</summary>
public sealed class WritingPageTests
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
        Assert.Contains(StarterGuide.Files.Values, t => t == page.QuerySelector(".written pre code")!.TextContent);
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
