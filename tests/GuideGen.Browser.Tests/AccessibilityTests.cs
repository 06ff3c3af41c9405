using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>axe-core finds nothing against WCAG 2.2 A and AA and its own best practice, on any kind of page, by day and by night, on a phone and at a desk.</summary>
public sealed class AccessibilityTests(BrowserHouse house)
{
    static readonly Dictionary<string, string> Filled = new()
    {
        ["weigh.html"] = "#w1;v=w20d;c=P0101.P0299;s=reduced-power",
        ["report.html"] = "#text=" + Uri.EscapeDataString("P0299 confirmed, PO101 pending"),
    };

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task No_kind_of_page_breaks_a_rule_of_accessibility(int width)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = width, Height = 844 } });
        var wrong = new List<string>();
        foreach (var address in house.ExtremesOfEveryKind())
        {
            await visit.Open(address + Filled.GetValueOrDefault(address));
            if (Filled.ContainsKey(address)) await visit.Page.Locator("#_weigh-causes h3, #_report-result h3").First.WaitForAsync();
            await visit.Page.EvaluateAsync(Shorten);
            await visit.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
            wrong.AddRange(from said in await Axe.Violations(visit.Page) select $"{address}: {said}");
            await visit.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            wrong.AddRange(from said in await Axe.Violations(visit.Page, rules: "color-contrast") select $"{address}, dark: {said}");
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        visit.IsClean();
    }

    // What a loop draws is alike, and axe takes half a minute for a thousand rows: of more than six of a kind the first and last three stay.
    const string Shorten = """
        () => {
          document.querySelectorAll("details").forEach(d => { d.open = true; });
          for (const box of document.querySelectorAll("main, main *")) {
            const alike = Map.groupBy([...box.children], e => e.tagName + " " + e.className);
            for (const group of alike.values()) if (group.length > 6) group.slice(3, -3).forEach(e => e.remove());
          }
        }
        """;
}
