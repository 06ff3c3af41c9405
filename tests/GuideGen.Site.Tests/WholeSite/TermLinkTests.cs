using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using GuideGen.Guide.Loading;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>A word of the trade leads to what it means, once on each page.</summary>
public sealed class TermLinkTests
{
    static readonly SitePlan Plan = SitePlan.Make(GuideLoader.Load(Guides.Open(Guides.Demo)).Guide);

    static List<IElement> LinksOn(string address)
    {
        var html = new SiteRenderer(Plan, GuideTheme.Of(ThemeFiles.BuiltIn, Plan.Guide).Theme).Draw(Plan.Pages.Single(p => p.Address == address));
        return [.. new HtmlParser().ParseDocument(Encoding.UTF8.GetString(html)).QuerySelectorAll("a.term")];
    }

    [Fact]
    public void A_term_is_linked_at_its_first_use_and_not_again()
    {
        var targets = LinksOn("faults/charge-air-hose-split.html").ConvertAll(a => a.GetAttribute("href"));
        Assert.Contains("../terms.html#intercooler", targets);
        Assert.Equal(targets.Distinct(), targets);
    }

    [Fact]
    public void Another_name_of_a_term_may_be_an_everyday_word_and_is_not_linked() =>
        Assert.DoesNotContain("ground", LinksOn("faults/charge-air-hose-split.html").Select(a => a.TextContent));

    [Fact]
    public void A_term_in_a_heading_or_in_a_link_is_left_alone() =>
        Assert.All(LinksOn("faults/charge-air-hose-split.html"), a => Assert.Null(a.ParentElement!.Closest("a, h1, h2, h3")));
}
