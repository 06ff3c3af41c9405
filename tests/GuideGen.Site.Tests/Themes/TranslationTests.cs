using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Themes;

/// <summary>What a translation may say, and what it may not.</summary>
public sealed class TranslationTests
{
    const string Tree = "content/trees/reduced-power.de.yml";

    /// <summary>Each change of a translated file, and what is found in it.</summary>
    public static TheoryData<string, string, string, string> Changes => new()
    {
        // Facts: a name, a number, a choice, a target of an answer, an answer more, a step more.
        { BothLanguages.Fault, "---\n## ", "codes: { P0299: rarely }\n---\n## ", "(4,17): error translation-fact: Only words can differ from 'content/faults/charge-air-hose-split.md'" },
        { BothLanguages.Fault, "---\n## ", "repair: { own-hours: 3 }\n---\n## ", "(4,22): error translation-fact: " },
        { BothLanguages.Fault, "---\n## ", "drive: stop-now\n---\n## ", "(4,8): error translation-fact: " },
        { Tree, "\"Ja, sie blinkt\": stop", "\"Ja, sie blinkt\": test", "(7,34): error translation-fact: " },
        { Tree, "\"Nein\": test", "\"Nein\": test, \"Vielleicht\": test", "(7,14): error translation-fact: " },
        { Tree, "  stop: {", "  more: { advice: \"Warte.\", drive: gently }\n  stop: {", "(8,3): error translation-fact: " },
        { Tree, "nodes:\n", "start: stop\nnodes:\n", "(3,8): error translation-fact: " },

        // What is said again as it is does no harm; other words for a thing need not be as many.
        { BothLanguages.Fault, "---\n## ", "drive: gently\n---\n## ", "" },
        { BothLanguages.Fault, "---\n## ", "sources: [Eigene Erfahrung, Handbuch, Werkstatt]\n---\n## ", "" },

        // A translation is inspected as a page is.
        { BothLanguages.Fault, "name: Lade", "nane: Lade", "(2,1): error translation-fact: " },
        { BothLanguages.Fault, "Verkeile die Räder und lass den heißen Motor eine Stunde abkühlen.", "Gib acht.", "(5,1): warning hazard-unmet: The hazard 'hot-parts' is declared" },
        { BothLanguages.Fault, "../checks/pressure-test.md", "../checks/no-test.md", "(15," },
        { BothLanguages.Fault, "## Was geschieht", "## Was passiert", "error section-missing: The section 'Was geschieht' is missing." },
        { "content/vehicle.de.yml", "name: 2.0 Turbodiesel", "fuel: petrol", "(3,27): error translation-fact: " },
        { "site-config.de.yml", "title:", "language: fr\ntitle:", "(1,11): error translation-fact: " },
    };

    [Theory, MemberData(nameof(Changes))]
    public void Words_may_differ_and_facts_may_not(string path, string old, string @new, string found)
    {
        var reading = GuideReading.Of(GuideLoader.LoadIn(BothLanguages.Guide().Replace(path, old, @new), "de")).OfEdition("de");

        var lines = reading.Findings.Select(FindingFormatter.ToLine).ToList();
        if (found.Length == 0) Assert.Empty(lines);
        else Assert.Contains(lines, l => l.StartsWith(path, StringComparison.Ordinal) && l.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_found_in_a_good_one()
    {
        Assert.Empty(GuideReading.Of(GuideLoader.LoadIn(BothLanguages.Guide(), "de")).OfEdition("de").Findings);
        Assert.Equal(GuideReading.Of(GuideLoader.Load(Guides.Open(Guides.Small))).Findings.Select(FindingFormatter.ToLine), GuideReading.Of(GuideLoader.Load(BothLanguages.Guide())).Findings.Select(FindingFormatter.ToLine));
    }
}
