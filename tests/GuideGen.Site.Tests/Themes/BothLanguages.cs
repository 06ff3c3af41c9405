using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Themes;

/// <summary>The small guide with an edition in German: one fault, one tree and the vehicle are translated.</summary>
static class BothLanguages
{
    public const string Fault = "content/faults/charge-air-hose-split.de.md";

    /// <summary>The front matter of the fault's translation.</summary>
    public const string Words = """
        name: Ladeluftschlauch gerissen
        summary: Der Schlauch öffnet sich unter Last, und Ladedruck entweicht.

        """;

    /// <summary>The text of the fault in German.</summary>
    public const string Text = """
        ## Sicherheit

        Verkeile die Räder und lass den heißen Motor eine Stunde abkühlen.

        ## Was geschieht

        Der Schlauch reißt an der Schelle.

        ## Sich vergewissern

        Sieh den Schlauch an, wie die [Druckprüfung](../checks/pressure-test.md) sagt.

        ## Beheben

        1. Setze den neuen Schlauch ein.

        ## Nachweisen

        Der Ladedruck folgt dem Sollwert.

        """;

    public static Overlay Guide() => new Overlay(Guides.Open(Guides.Small))
        .Replace("site-config.yml", "language: en-GB\n", "language: en-GB\nalso-in: [de]\n")
        .Put("site-config.de.yml", "title: Kleiner Ratgeber zum Loris\nsummary: Ein paar Seiten jeder Art.\n")
        .Put("content/vehicle.de.yml", "summary: Ein kompakter Lieferwagen.\nsystems: { air: Luft und Ladedruck }\nvariants: { w20d: { name: 2.0 Turbodiesel } }\n")
        .Put("content/trees/reduced-power.de.yml", """
            name: Von der verringerten Leistung zur Ursache
            summary: Erst schauen, dann Luft unter Druck.
            nodes:
              lamp:
                ask: Blinkt die Motorleuchte?
                why: Blinken heißt Aussetzer.
                answers: { "Ja, sie blinkt": stop, "Nein": test }
              stop: { advice: "Halte an, wo es sicher ist." }
            """)
        .Put(Fault, $"---\n{Words}---\n{Text}");
}
