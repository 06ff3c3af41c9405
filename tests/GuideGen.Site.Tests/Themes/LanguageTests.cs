using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Hazards;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Pages;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Themes;

/// <summary>A guide in another language than English, and what a language needs.</summary>
public sealed class LanguageTests
{
    [Fact]
    public void The_second_language_has_every_word_and_no_other() =>
        Assert.Empty(GuideTheme.Of(ThemeFiles.BuiltIn, GuideLoader.Load(In("de")).Guide).Findings);

    [Fact]
    public void A_german_guide_speaks_german_around_its_own_words()
    {
        var site = CompiledSite.Compile(German(), 2);
        var page = site.Pages["faults/charge-air-hose-split.html"].Document;

        Assert.Equal(("de", null), (page.DocumentElement.GetAttribute("lang"), page.DocumentElement.GetAttribute("dir")));
        Assert.Contains("Verkeile die Räder", page.QuerySelector(".section")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Heißer Auspuff und Turbolader", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("1,25 h, 119 EUR", page.QuerySelector(".glance")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("143.000 km", page.Body.TextContent, StringComparison.Ordinal);
        Assert.Contains("2. Mai 2026", site.Text("faults/charge-air-hose-split.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("At a glance", site.Text("faults/charge-air-hose-split.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_german_page_without_its_safety_section_is_refused()
    {
        var findings = GuideReading.Of(GuideLoader.Load(German().Replace("content/faults/charge-air-hose-split.md", "## Sicherheit", "## Safety"))).Findings;

        Assert.Contains(findings, f => f.Rule == Rules.SafetyMissing);
    }

    [Fact]
    public void A_language_without_words_is_told_and_english_stands_in()
    {
        var finding = Assert.Single(GuideTheme.Of(ThemeFiles.BuiltIn, GuideLoader.Load(In("fr")).Guide).Findings);

        Assert.StartsWith("site-config.yml(2,11): warning words-missing: In 'fr', ", FindingFormatter.ToLine(finding), StringComparison.Ordinal);
    }

    [Fact]
    public void The_forms_of_a_language_are_asked_for_and_the_guide_may_give_them()
    {
        var polish = In("pl").Put("theme/words/pl.yml", "evidence:\n  times: { one: raz, few: \"{0} razy\", many: \"{0} razy\", other: \"{0} raza\" }\n");

        var look = GuideTheme.Of(ThemeFiles.BuiltIn, GuideLoader.Load(polish).Guide);

        Assert.Equal(["words-missing"], look.Findings.Select(f => f.Rule.Id));
        Assert.Equal(["raz", "{0} razy", "{0} razy", "{0} razy"], new long[] { 1, 2, 5, 22 }.Select(n => look.Theme.Words.FormOf("evidence.times", n)));
    }

    [Theory]
    [InlineData("ar")]
    [InlineData("he")]
    [InlineData("fa-IR")]
    public void A_language_that_runs_from_right_to_left_says_so(string language)
    {
        var site = CompiledSite.Compile(In(language), 2);

        Assert.All(site.Pages.Values.Where(p => p.Document.QuerySelector(".head") is not null), p => Assert.Equal("rtl", p.Document.DocumentElement.GetAttribute("dir")));
    }

    [Fact]
    public void German_hazards_are_the_english_ones_in_other_words()
    {
        var (english, german) = (HazardBook.BuiltIn, HazardBook.In("de-AT"));

        Assert.Equal(english.Keys.Order(StringComparer.Ordinal), german.Keys.Order(StringComparer.Ordinal));
        Assert.All(english, h =>
        {
            var other = german[h.Key];
            Assert.Equal((h.Value.Signal.Value, h.Value.IsGrave, h.Value.Cautions.Length, h.Value.HandOver is null), (other.Signal.Value, other.IsGrave, other.Cautions.Length, other.HandOver is null));
            Assert.NotEqual(h.Value.Cautions[0].Value, other.Cautions[0].Value);
        });
    }

    static Overlay In(string language) => new Overlay(Guides.Open(Guides.Small)).Replace("site-config.yml", "language: en-GB", $"language: {language}");

    /// <summary>The small guide with German titles of sections, of which one page is written in German throughout.</summary>
    static Overlay German() => Titled(In("de")).Put("content/faults/charge-air-hose-split.md", $$"""
        ---
        {{BothLanguages.Words.TrimEnd()}}
        system: air
        codes: { P0299: usually, P1A42: 0.2 }
        symptoms: { reduced-power: always, engine-lamp: sometimes }
        variants: [w20d]
        parts: [charge-air-hose]
        checks: [pressure-test, look-over]
        belief: 8
        drive: gently
        repair:
          own-hours: 0.75
          workshop-hours: 1.25
          skill: 2
        hazards: [hot-parts]
        reviewed: 2026-05-02
        ---
        {{BothLanguages.Text}}
        """);

    static Overlay Titled(Overlay guide)
    {
        foreach (var page in guide.Paths.Where(p => p.EndsWith(".md", StringComparison.Ordinal)))
        {
            Assert.True(guide.TryRead(page, out var bytes, out _));
            var lines = Encoding.UTF8.GetString(bytes).Split('\n').Select(l => l.StartsWith("## ", StringComparison.Ordinal) ? "## " + SectionTitles.In("de", l[3..].TrimEnd()) : l);
            guide.Put(page, string.Join('\n', lines));
        }

        return guide;
    }
}
