using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Tests.Themes;

/// <summary>A guide changes pieces of its look, and what it gets wrong in them is told with its place.</summary>
public sealed class GuideThemeTests
{
    [Fact]
    public void One_template_changes_its_pages_and_no_other()
    {
        var site = CompiledSite.Compile(With("theme/templates/part.html", "<p id=\"own\">{{ name }} of {{ site.vehicle }}</p>\n"), 2);

        Assert.Equal("Charge-air hose of Wexcombe Loris", site.Pages["parts/charge-air-hose.html"].Document.GetElementById("own")!.TextContent);
        Assert.Equal(CompiledSite.Of(Guides.Small).Text("tasks/read-codes.html"), site.Text("tasks/read-codes.html"));
    }

    [Fact]
    public void A_wording_of_the_guides_own_stands_on_every_page_and_the_others_stay()
    {
        var site = CompiledSite.Compile(With("theme/words/en.yml", "nav: { home: Beginning, tasks: \"{{Jobs}}\" }\n"), 2);

        Assert.All(site.Pages.Values.Where(p => p.Document.QuerySelector(".head nav") is not null), p =>
            Assert.Contains("Codes", p.Document.QuerySelector(".head nav")!.TextContent, StringComparison.Ordinal));
        Assert.DoesNotContain(">Tasks<", site.Text("index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_style_of_the_guides_own_stands_under_a_name_of_its_own()
    {
        var site = CompiledSite.Compile(With("theme/style/workshop.css", "body { color: teal }\n"), 2);

        var sheet = site.Files.Keys.Single(a => a.StartsWith("assets/workshop.", StringComparison.Ordinal));
        Assert.Equal("body { color: teal }\n", site.Text(sheet));
        Assert.Contains(sheet, site.Text("index.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("part.html", "<p>\n{{ for x in checks }}{{ x.name }}</p>\n", "(2,34): error theme-template")]
    [InlineData("part.html", "<p>\n{{ nothing_of_the_kind }}</p>\n", "(2,4): error theme-template")]
    [InlineData("part.html", "{{ words.part.whence }}", "(1,15): error theme-template")]
    [InlineData("part.html", "{{ piece \"no-such-piece\" }}", "(1,4): error theme-template")]
    [InlineData("part.html", "{{ piece \"part\" }}", "(1,4): error theme-template")]
    [InlineData("part.html", "{{ for i in 1..100000 }}{{ for j in 1..100000 }}{{ end }}{{ end }}", "error theme-template")]
    [InlineData("part.html", "{{ x = 0; while true; x = x + 1; end }}", "error theme-template")]
    [InlineData("part.html", "{{ x = \"0123456789\"; for i in 1..60; x = x + x; end; x }}", "error theme-template")]
    [InlineData("part.html", "{{ x = \"0123456789\" | string.pad_left 2000000000; x }}", "error theme-template")]
    [InlineData("part.html", "{{ for i in 1..150000 }}{{ for j in 1..13 }}0123456789{{ end }}{{ \"0123456789\" }}{{ end }}", "error theme-template")]
    [InlineData("part.html", "{{ func f; f; end; f }}", "error theme-template")]
    [InlineData("part.html", "{{ include '/etc/passwd' }}", "(1,4): error theme-template")]
    [InlineData("part.html", "{{ date.now }}", "(1,4): error theme-template")]
    [InlineData("part.html", "{{ object.eval \"1\" }}", "(1,4): error theme-template")]
    [InlineData("part.html", "<script src=\"{{ page.root }}assets/own.js\"></script>\n", "(1,36): error theme-asset")]
    public void A_template_that_cannot_be_drawn_is_told_with_its_place(string piece, string text, string expected)
    {
        var told = FindingFormatter.ToLine(Fault("theme/templates/" + piece, text));

        Assert.StartsWith("theme/templates/" + piece, told, StringComparison.Ordinal);
        Assert.Contains(expected, told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{{ for x in checks }}")]
    [InlineData("{{ nome }}")]
    public void A_site_with_a_broken_template_is_not_written(string text)
    {
        var result = SiteCompiler.Compile(With("theme/templates/part.html", text), ThemeFiles.BuiltIn, new MemoryTarget(2), new CompiledSite.Unheard());

        Assert.False(result.IsWritten);
        Assert.Equal("theme-template", Assert.Single(result.Findings, f => f.Severity == Severity.Error).Rule.Id);
    }

    [Theory]
    [InlineData("theme/words/en.yml", "nav:\n  hone: Beginning\n", "theme/words/en.yml(2,9): warning words-unknown: Nothing asks for the wording 'nav.hone'.", "Did you mean 'nav.home'?")]
    [InlineData("theme/words/en.yml", "units: { hours: \"{0} of {1} h\" }\n", "theme/words/en.yml(1,17): error words-places: The wording 'units.hours' has the place {1}", "'{0} h'")]
    [InlineData("theme/words/en.yml", "units: { hours: \"{0 h\" }\n", "theme/words/en.yml(1,17): error words-places", "Two braces")]
    [InlineData("theme/words/en.yml", "units: [\n", "theme/words/en.yml(2,1): error yaml-syntax", "")]
    [InlineData("theme/fonts/own.woff2", "x", "theme/fonts/own.woff2(1,1): warning theme-file", "theme/style")]
    [InlineData("theme/templates/part.htm", "x", "theme/templates/part.htm(1,1): warning theme-file", "(.html)")]
    public void What_is_wrong_with_a_piece_is_told(string path, string text, string line, string hint)
    {
        var loaded = GuideLoader.Load(With(path, text));
        var finding = Assert.Single([.. loaded.Findings, .. GuideTheme.Of(ThemeFiles.BuiltIn, loaded.Guide).Findings]);

        Assert.StartsWith(line, FindingFormatter.ToLine(finding), StringComparison.Ordinal);
        Assert.Contains(hint, finding.Hint, StringComparison.Ordinal);
    }

    /// <summary>What is wrong with a template, be it on reading or on drawing the one page it is for.</summary>
    static Finding Fault(string path, string text)
    {
        var guide = GuideLoader.Load(With(path, text)).Guide;
        var look = GuideTheme.Of(ThemeFiles.BuiltIn, guide);
        if (look.HasErrors) return Assert.Single(look.Findings);
        var plan = SitePlan.Make(guide);
        return Assert.Throws<ThemeException>(() => new SiteRenderer(plan, look.Theme).Draw(plan.Pages.First(p => p.Template == "part"))).Finding!;
    }

    static Overlay With(string path, string text) => new Overlay(Guides.Open(Guides.Small)).Put(path, text);
}
