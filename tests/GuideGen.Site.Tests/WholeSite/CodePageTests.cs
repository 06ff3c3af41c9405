using AngleSharp.Dom;
using GuideGen.Codes;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>No code is a dead end: every standard code is listed with what it means, every code of the guide has a page.</summary>
public sealed class CodePageTests
{
    static readonly CompiledSite Demo = CompiledSite.Of(Guides.Demo);

    [Fact]
    public void Every_standard_code_stands_on_the_page_of_its_group_with_its_meaning()
    {
        var listed = Demo.Pages.Values.Where(p => p.Address is ['c', 'o', 'd', 'e', 's', '/', _, _, _, '.', ..])
            .SelectMany(p => p.Document.QuerySelectorAll(".code-list > div"))
            .ToDictionary(row => row.Id!, row => row.QuerySelector("dd")!.TextContent);

        Assert.All(CodeCatalogue.Standard, e =>
        {
            var shown = listed[e.Code.ToString().ToLowerInvariant()];
            var own = Demo.Guide.Codes.Find(e.Code.ToString())?.Meaning.Value;
            Assert.StartsWith(own ?? e.Meaning, shown, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void What_has_to_be_said_beside_a_meaning_is_said_on_both_pages()
    {
        var entry = CodeCatalogue.Find(TroubleCode.Parse("C0035"))!;
        var row = Demo.Pages["codes/c00.html"].Document.GetElementById("c0035")!;

        Assert.All(entry.Notes, n => Assert.Contains(n, row.TextContent, StringComparison.Ordinal));
        Assert.All(entry.Notes, n => Assert.Contains(n, Demo.Pages["codes/c0035.html"].Document.Body!.TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void A_code_page_says_what_the_control_unit_saw_and_what_to_check_first_with_its_cautions()
    {
        var entry = CodeCatalogue.Find(TroubleCode.Parse("P0401"))!;
        var section = Demo.Pages["codes/p0401.html"].Document.QuerySelector("#_saw")!.ParentElement!;
        var caution = section.QuerySelector(".caution")!;
        var steps = section.QuerySelector("ol")!;

        Assert.Contains(entry.Condition.Saw, section.TextContent, StringComparison.Ordinal);
        Assert.Equal(entry.Cautions, caution.QuerySelectorAll("li").Select(l => l.TextContent));
        Assert.Equal(entry.Condition.Steps, steps.QuerySelectorAll("li").Select(l => l.TextContent));
        Assert.True(caution.CompareDocumentPosition(steps).HasFlag(DocumentPositions.Following));
    }

    [Fact]
    public void The_faults_that_set_a_code_come_in_the_order_of_evidence()
    {
        var shown = Demo.Pages["codes/p0299.html"].Document.QuerySelector("#_faults")!.ParentElement!
            .QuerySelectorAll(".card > a").Select(a => a.GetAttribute("href")!["../faults/".Length..^".html".Length]).ToList();
        var evidence = shown.Select(slug =>
        {
            var fault = Demo.Guide.Faults.Find(slug)!;
            var likelihood = fault.Codes.Single(c => c.Key.Value.ToString() == "P0299").Value.Value.Value;
            var cases = Demo.Guide.Cases.Count(c => c.Found.Value == slug && c.Codes.Any(k => k.Key.Value.ToString() == "P0299"));
            return (fault.Belief.Value * likelihood) + cases;
        }).ToList();

        Assert.True(shown.Count > 2);
        Assert.Equal(evidence.OrderDescending(), evidence);
    }

    [Fact]
    public void A_makers_own_code_shows_only_what_this_guide_says_of_it()
    {
        var page = Demo.Pages["codes/p1a42.html"].Document;

        Assert.Contains(Demo.Guide.Codes.Find("P1A42")!.Meaning.Value, page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("#_saw"));
    }
}
