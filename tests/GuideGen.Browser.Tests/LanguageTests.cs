using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>What depends on the language of a guide.</summary>
public sealed class LanguageTests(BrowserHouse house)
{
    /// <summary>Intl.PluralRules of Chromium, which has them from ICU and so from the Unicode CLDR, is the reference.</summary>
    [Fact]
    public async Task Plural_forms_are_those_of_the_browser()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("404.html");
        long[] numbers = [.. Enumerable.Range(0, 230).Select(n => (long)n), 1000, 1001, 1_000_000, 2_000_000, 1_000_001];
        var wrong = new List<string>();
        foreach (var language in PluralForms.Languages)
        {
            var forms = await visit.Page.EvaluateAsync<string[]>("([tag, numbers]) => numbers.map(n => new Intl.PluralRules(tag).select(n))", new object[] { language, numbers });
            wrong.AddRange(from at in numbers.Zip(forms) where PluralForms.Of(language, at.First) != at.Second select $"{language} {at.First}: {at.Second}, not {PluralForms.Of(language, at.First)}");
        }

        Assert.Empty(wrong);
        Assert.True(PluralForms.Languages.Count() > 40);
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task A_site_that_runs_from_right_to_left_begins_at_the_right_and_nothing_hangs_out(int width)
    {
        using var temp = new TempFolder();
        await using var visit = await house.VisitAt(Compile(temp, "language: ar"), new() { ViewportSize = new() { Width = width, Height = 900 } });
        foreach (var address in new[] { "index.html", "codes.html", "faults/charge-air-hose-split.html", "trees/reduced-power.html", "checks/pressure-test.html", "weigh.html", "report-a-case.html", "terms.html" })
        {
            await visit.Open(address);
            var seen = await visit.Page.EvaluateAsync<int[]>("""
                () => {
                  const heading = document.querySelector("h1").getBoundingClientRect();
                  const main = document.querySelector("main").getBoundingClientRect();
                  return [document.documentElement.scrollWidth - innerWidth, Math.round(main.right - heading.right), heading.top > 0 ? 1 : 0];
                }
                """);
            Assert.Equal((address, 0, 1), (address, seen[0], seen[2]));
            Assert.InRange(seen[1], 0, 60);
        }

        visit.IsClean();
    }

    [Fact]
    public async Task A_reader_changes_the_language_and_stays_on_the_page()
    {
        using var temp = new TempFolder();
        await using var visit = await house.VisitAt(Compile(temp, "language: en-GB\nalso-in: [de]"));
        await visit.Open("trees/reduced-power.html");

        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Deutsch", Exact = true }).ClickAsync();

        Assert.StartsWith("de/trees/reduced-power.html", visit.Address, StringComparison.Ordinal);
        await Assertions.Expect(visit.Page.Locator("#_walk")).ToContainTextAsync("Schritt");
        await visit.Page.Locator("#_find-box").FillAsync("P0299");
        await Assertions.Expect(visit.Page.Locator("#_find [role=option]").First).ToContainTextAsync("P0299");
        Assert.Empty(await Axe.Violations(visit.Page));
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "English", Exact = true }).ClickAsync();
        Assert.StartsWith("trees/reduced-power.html", visit.Address, StringComparison.Ordinal);
        visit.IsClean();
    }

    /// <returns>The address of a site of the small guide, whose settings state its language so.</returns>
    static string Compile(TempFolder temp, string language)
    {
        FixtureGuide.CopyTo(temp.PathTo("guide"));
        var settings = temp.PathTo("guide", GuideLoader.SettingsFile);
        File.WriteAllText(settings, File.ReadAllText(settings).Replace("language: en-GB", language, StringComparison.Ordinal));
        var site = temp.PathTo("site");
        var result = SiteCompiler.Compile(new FolderFiles(temp.PathTo("guide")), ThemeFiles.BuiltIn, new FolderTarget(site, 2), new BrowserHouse.Unheard());
        Assert.True(result.IsWritten);
        return new Uri(site + "/").AbsoluteUri;
    }
}
