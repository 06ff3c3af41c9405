using AngleSharp.Html.Parser;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>A guide may allow some HTML. What is allowed works, and nothing else comes through, whatever the inspection thought of it.</summary>
public sealed class AllowedHtmlTests
{
    [Fact]
    public void What_the_settings_allow_becomes_markup()
    {
        var guide = new Overlay(Guides.Open(Guides.Small))
            .Append("site-config.yml", "html: [kbd, details, summary]\n")
            .Replace("content/parts/charge-air-hose.md", "It carries the boost.", "Press <kbd>F</kbd>.\n\n<details>\n<summary>More</summary>\n\nIt *carries* [the air](charge-air-hose.md).\n\n</details>");

        var page = CompiledSite.Compile(guide, 2).Pages["parts/charge-air-hose.html"].Document;

        Assert.Equal("F", page.QuerySelector("kbd")!.TextContent);
        Assert.Equal("carries", page.QuerySelector("details em")!.TextContent);
        Assert.NotNull(page.QuerySelector("details > summary"));
    }

    [Fact]
    public void Pages_of_a_guide_that_allows_some_html_are_drawn_as_before()
    {
        var site = CompiledSite.Compile(new Overlay(Guides.Open(Guides.Small)).Append("site-config.yml", "html: [kbd]\n"), 2);
        var expected = CompiledSite.Of(Guides.Small);

        Assert.All(expected.Pages.Keys, a => Assert.Equal(expected.Pages[a].Document.Body!.OuterHtml, site.Pages[a].Document.Body!.OuterHtml));
    }

    // Ways to smuggle markup past a filter, from memory: each has to end without an element, attribute or address that acts.
    [Theory]
    [InlineData("<kbd onclick=alert(1)>x</kbd>")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("<a href=\"java&#10;script:alert(1)\">x</a>")]
    [InlineData("<a href=\"data:text/html,x\">x</a>")]
    [InlineData("<svg><script>alert(1)</script></svg>")]
    [InlineData("<math><mtext><table><mglyph><style><img src=x onerror=alert(1)>")]
    [InlineData("<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\">")]
    [InlineData("<div style=\"background:url(https://example.org/x)\">x</div>")]
    [InlineData("<form action=\"https://example.org\"><button>x</button></form>")]
    [InlineData("<iframe srcdoc=\"<script>alert(1)</script>\"></iframe>")]
    [InlineData("<base href=\"https://example.org/\">")]
    [InlineData("<meta http-equiv=refresh content=\"0;url=https://example.org\">")]
    public void Nothing_that_acts_comes_through(string html)
    {
        var drawn = new HtmlParser().ParseDocument(new HtmlCleaner(["kbd"]).Clean(new HtmlText(html)).Value).Body!;

        Assert.Empty(drawn.QuerySelectorAll("script, style, iframe, svg, math, form, button, base, meta, noscript"));
        Assert.DoesNotContain(drawn.QuerySelectorAll("*").SelectMany(e => e.Attributes), a =>
            a.Name.StartsWith("on", StringComparison.Ordinal) || a.Name is "style" or "srcdoc" or "action" || a.Value.Contains("script:", StringComparison.OrdinalIgnoreCase) || a.Value.StartsWith("data:", StringComparison.Ordinal));
    }
}
