namespace GuideGen.Browser.Tests;

/// <summary>
/// Gloves on: whatever is tapped and does not stand inside a sentence is met over 44 px of height (WCAG 2.2, 2.5.5, and its exception for what
/// is inline). What counts is where a tap lands, not how large something is drawn.
/// </summary>
public sealed class TargetTests(BrowserHouse house)
{
    static readonly Dictionary<string, string> Filled = new() { ["weigh.html"] = "#w1;v=w20d;c=P0101.P0299;s=reduced-power" };

    // Half a pixel at each end is lost to rounding, so 43 whole ones are asked for. Drawings are left out: beside each stands a list of the same links.
    const string TooLow = """
        () => {
          document.querySelectorAll("details").forEach(d => { d.open = true; });
          const inSentence = e => {
            const { parentElement: box } = e;
            const isTextBeside = [...box.childNodes].some(n => n !== e && n.nodeType === Node.TEXT_NODE && /[^\s,;·.:]/.test(n.textContent));
            return isTextBeside || (getComputedStyle(box).display === "inline" && inSentence(box));
          };
          const heightOf = target => {
            target.scrollIntoView({ block: "center", behavior: "instant" });
            const box = target.getClientRects()[0], x = box.left + Math.min(box.width / 2, 40), y = box.top + box.height / 2;
            const meets = down => { const at = document.elementFromPoint(x, y + down); return at !== null && target.contains(at); };
            const reach = way => { let far = 0; while (far < 30 && meets(way * (far + 1))) far++; return far; };
            return meets(0) ? reach(-1) + 1 + reach(1) : 0;
          };
          return [...document.querySelectorAll("a[href], button, input, select, textarea, summary")]
            .filter(e => e.checkVisibility({ visibilityProperty: true }) && !e.matches(".skip") && !e.closest("svg"))
            .map(e => e.matches("[type=checkbox], [type=radio]") ? e.closest("label") ?? e : e)
            .filter(e => !(getComputedStyle(e).display === "inline" && inSentence(e)))
            .map(e => [heightOf(e), e]).filter(([height]) => height < 43)
            .map(([height, e]) => `${height} px: ${e.tagName} ${e.textContent.trim().slice(0, 30)}`);
        }
        """;

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task What_is_tapped_is_met_over_the_height_of_a_thumb(int width)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = width, Height = 844 } });
        var wrong = new List<string>();
        foreach (var address in house.ExtremesOfEveryKind())
        {
            await visit.Open(address + Filled.GetValueOrDefault(address));
            if (Filled.ContainsKey(address)) await visit.Page.Locator("#_weigh-causes h3").First.WaitForAsync();
            wrong.AddRange(from said in await visit.Page.EvaluateAsync<string[]>(TooLow) select $"{address}: {said}");
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        visit.IsClean();
    }
}
