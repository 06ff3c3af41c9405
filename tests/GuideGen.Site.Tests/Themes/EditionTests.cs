using System.Text;
using System.Xml.Linq;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Bundling;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Themes;

/// <summary>A guide of which some pages stand in a second language, too.</summary>
public sealed class EditionTests
{
    const string Fault = "faults/charge-air-hose-split.html";

    static readonly CompiledSite Site = CompiledSite.Compile(BothLanguages.Guide(), 2);

    [Fact]
    public void The_first_edition_is_the_same_as_without_the_other_but_for_the_way_to_it()
    {
        var alone = CompiledSite.Compile(Guides.Open(Guides.Small), 2);

        Assert.Equal(alone.Files.Keys, Site.Files.Keys.Where(a => !a.StartsWith("de/", StringComparison.Ordinal)));
        Assert.All(alone.Pages.Values, page => Assert.Equal(page.Document.QuerySelector("main")!.OuterHtml, Site.Pages[page.Address].Document.QuerySelector("main")!.OuterHtml));
    }

    [Fact]
    public void Every_page_stands_in_every_language_and_leads_to_the_others()
    {
        string[] onlyOnce = ["_headers", "robots.txt", ServiceWorkerAddress];
        Assert.Equal(Site.Pages.Keys.Where(a => !a.StartsWith("de/", StringComparison.Ordinal)), Site.Pages.Keys.Where(a => a.StartsWith("de/", StringComparison.Ordinal)).Select(a => a[3..]).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(Site.Files.Keys, a => onlyOnce.Contains(a[(a.IndexOf('/', StringComparison.Ordinal) + 1)..]) && a.StartsWith("de/", StringComparison.Ordinal));
        Assert.Equal(["English|../" + Fault + "|true", "Deutsch|../de/" + Fault + "|"], WaysOf(Fault));
        Assert.Equal(["English|../../" + Fault + "|", "Deutsch|../../de/" + Fault + "|true"], WaysOf("de/" + Fault));
        Assert.Equal(["English|index.html|", "Deutsch|de/index.html|"], WaysOf("index.html").Select(w => w.Replace("|true", "|", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_translation_says_its_words_and_the_original_its_facts()
    {
        var (english, german) = (Site.Pages[Fault].Document, Site.Pages["de/" + Fault].Document);

        Assert.Equal(("en-GB", "de"), (english.DocumentElement.GetAttribute("lang"), german.DocumentElement.GetAttribute("lang")));
        Assert.Equal("Ladeluftschlauch gerissen", german.QuerySelector("h1")!.TextContent);
        Assert.Contains("Verkeile die Räder", german.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Heißer Auspuff und Turbolader", german.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(CodesIn(english), CodesIn(german));
        Assert.Null(german.QuerySelector(".not-translated"));
        Assert.Null(german.QuerySelector("main")!.GetAttribute("lang"));
    }

    [Fact]
    public void A_page_that_is_not_translated_may_link_to_a_heading_that_only_the_original_has()
    {
        var guide = BothLanguages.Guide().Append("content/checks/pressure-test.md", "\nSee [how to mend it](../faults/charge-air-hose-split.md#put-it-right).\n");

        var site = CompiledSite.Compile(guide, 2);

        Assert.Equal(["../faults/charge-air-hose-split.html#put-it-right"], LinkIn("checks/pressure-test.html"));
        Assert.Equal(["../faults/charge-air-hose-split.html"], LinkIn("de/checks/pressure-test.html"));

        IEnumerable<string?> LinkIn(string page) => site.Pages[page].Document.QuerySelectorAll("main a").Where(a => a.TextContent == "how to mend it").Select(a => a.GetAttribute("href"));
    }

    [Fact]
    public void A_translation_may_not()
    {
        var result = SiteCompiler.Compile(BothLanguages.Guide().Append(BothLanguages.Fault, "\nSieh [dort](#put-it-right).\n"), ThemeFiles.BuiltIn, new MemoryTarget(1), new CompiledSite.Unheard());

        Assert.Equal((BothLanguages.Fault, "anchor-missing"), result.Findings.Where(f => f.Severity is Severity.Error).Select(f => (f.Span.Path, f.Rule.Id)).Single());
    }

    [Fact]
    public void An_error_that_only_a_translation_makes_is_told_wherever_it_stands()
    {
        var reading = GuideReading.Of(GuideLoader.Load(new Overlay(Guides.Open(Guides.Small)).Append("content/checks/pressure-test.md", "\nSee [this](nowhere.md).\n").Append("content/parts/charge-air-hose.md", "\nSee [that](https://club.example).\n")));

        Assert.Contains("link-outside", reading.Findings.Select(f => f.Rule.Id));
        Assert.Equal(["link-broken"], reading.OfEdition("de").Findings.Select(f => f.Rule.Id));
        Assert.True(reading.OfEdition("de").HasErrors);
    }

    [Fact]
    public void A_tree_keeps_its_steps_and_says_them_in_the_other_language()
    {
        var (english, german) = (Site.Pages["trees/reduced-power.html"].Document, Site.Pages["de/trees/reduced-power.html"].Document);

        Assert.Equal(english.QuerySelectorAll(".step").Select(s => s.Id), german.QuerySelectorAll(".step").Select(s => s.Id));
        Assert.Contains("Blinkt die Motorleuchte?", german.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Ja, sie blinkt", german.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_that_is_not_translated_says_so_and_names_its_language()
    {
        var page = Site.Pages["de/checks/pressure-test.html"].Document;

        Assert.Equal(("de", "en-GB"), (page.DocumentElement.GetAttribute("lang"), page.QuerySelector("main")!.GetAttribute("lang")));
        Assert.Contains("noch nicht übersetzt", page.QuerySelector(".not-translated")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_the_search_and_the_scripts_of_an_edition_speak_its_language()
    {
        Assert.Contains("Ladeluftschlauch gerissen", Site.Pages["de/faults.html"].Document.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Ladeluftschlauch gerissen", Unescaped("de/data/codes.js"), StringComparison.Ordinal);
        Assert.DoesNotContain("Ladeluftschlauch", Unescaped("data/codes.js"), StringComparison.Ordinal);
    }

    [Fact]
    public void Search_engines_are_told_of_every_edition()
    {
        var site = CompiledSite.Compile(BothLanguages.Guide().Replace("site-config.yml", "language: en-GB\n", "language: en-GB\nbase: https://example.org/loris/\n"), 2);

        Assert.Equal(
            ["canonical https://example.org/loris/de/" + Fault, "en-GB https://example.org/loris/" + Fault, "de https://example.org/loris/de/" + Fault],
            site.Pages["de/" + Fault].Document.QuerySelectorAll("link[rel=canonical], link[hreflang]").Select(l => $"{l.GetAttribute("hreflang") ?? "canonical"} {l.GetAttribute("href")}"));
        Assert.Contains("Sitemap: https://example.org/loris/sitemap.xml\nSitemap: https://example.org/loris/de/sitemap.xml\n", site.Text("robots.txt"), StringComparison.Ordinal);
        Assert.All(XDocument.Parse(site.Text("de/sitemap.xml")).Descendants().Where(e => e.Name.LocalName == "loc"), e => Assert.StartsWith("https://example.org/loris/de/", e.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void All_editions_are_kept_on_a_device_by_one_script()
    {
        Assert.Contains("\"de/" + Fault + "\"", Site.Text(ServiceWorkerAddress), StringComparison.Ordinal);
        Assert.Equal("../", Site.Pages["de/" + Fault].Document.GetElementById("_offline")!.GetAttribute("data-root"));
        Assert.Equal("", Site.Pages[Fault].Document.GetElementById("_offline")!.GetAttribute("data-root"));
    }

    [Fact]
    public void A_guide_in_one_file_has_its_first_edition()
    {
        using var temp = new TempFolder();
        var path = temp.PathTo("guide.html");

        SiteCompiler.Compile(BothLanguages.Guide(), ThemeFiles.BuiltIn, new SingleFileTarget(path, 2), new CompiledSite.Unheard());

        Assert.DoesNotContain("Ladeluftschlauch gerissen", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_translation_stops_the_compile_as_a_wrong_page_does()
    {
        var guide = BothLanguages.Guide().Replace(BothLanguages.Fault, "## Sicherheit", "## Vorsicht");

        var result = SiteCompiler.Compile(guide, ThemeFiles.BuiltIn, new MemoryTarget(2), new CompiledSite.Unheard());

        Assert.False(result.IsWritten);
        Assert.Contains("content/faults/charge-air-hose-split.de.md(9,1): error safety-missing: The section 'Sicherheit' is missing.", result.Findings.Select(f => FindingFormatter.ToLine(f).Split(" | ")[0]));
    }

    const string ServiceWorkerAddress = "keep.js";

    static IEnumerable<string> WaysOf(string address) => Site.Pages[address].Document.QuerySelectorAll(".editions a")
        .Select(a => $"{a.TextContent}|{a.GetAttribute("href")}|{a.GetAttribute("aria-current")}");

    static IEnumerable<string> CodesIn(AngleSharp.Html.Dom.IHtmlDocument page) => page.QuerySelectorAll("main code").Select(c => c.TextContent).Where(t => t.StartsWith('P')).Distinct().Order(StringComparer.Ordinal);

    static string Unescaped(string address) => System.Text.RegularExpressions.Regex.Unescape(Encoding.UTF8.GetString(Site.Files[address]).Replace("\\\"", "\"", StringComparison.Ordinal));
}
