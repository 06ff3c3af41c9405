namespace GuideGen.Browser.Tests;

/// <summary>No mouse and no finger: what has the focus is seen, is not covered, and trees are walked by keys alone.</summary>
public sealed class KeyboardTests(BrowserHouse house)
{
    const string Tree = "trees/no-cold-air.html";
    const int Stops = 20;

    // One of each way to be operated: the rest are links and text.
    static readonly string[] Operated = ["index.html", "faults/charge-air-hose-split.html", "checks/temperature-sensor-resistance.html", Tree, "weigh.html", "report-a-case.html", "report.html"];

    // WCAG 2.2, 2.4.7 (focus visible) and 2.4.11 (focus not obscured): said of whatever has the focus now.
    const string AtFocus = """
        () => {
          const e = document.activeElement;
          if (e === document.body) return "";
          const box = e.getBoundingClientRect(), style = getComputedStyle(e);
          const name = e.tagName + " " + (e.id || e.getAttribute("href") || e.textContent.trim().slice(0, 30));
          if (box.bottom <= 0 || box.top >= innerHeight || box.right <= 0 || box.left >= innerWidth) return "out of sight: " + name;
          const label = e.closest("label"), drawn = label && e.matches("input") ? getComputedStyle(e.nextElementSibling || label) : style;
          if (style.outlineStyle === "none" && drawn.outlineStyle === "none") return "no outline: " + name;
          const at = document.elementFromPoint(Math.max(0, Math.min(innerWidth - 1, box.left + box.width / 2)), Math.max(0, Math.min(innerHeight - 1, box.top + box.height / 2)));
          return at && (e.contains(at) || at.contains(e)) ? "" : "covered: " + name;
        }
        """;

    [Fact]
    public async Task What_has_the_focus_is_seen_and_not_covered()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = 1280, Height = 800 } });
        var wrong = new List<string>();
        foreach (var address in Operated)
        {
            await visit.Open(address);
            for (var stop = 0; stop < Stops; stop++)
            {
                await visit.Page.Keyboard.PressAsync("Tab");
                var said = await visit.Page.EvaluateAsync<string>(AtFocus);
                if (said.Length > 0) wrong.Add($"{address}, stop {stop}: {said}");
            }
        }

        Assert.Empty(wrong);
        visit.IsClean();
    }

    [Fact]
    public async Task The_first_stop_skips_to_the_page_itself()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("faults.html");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.IsAt("faults.html#_page");
        await visit.Page.Keyboard.PressAsync("Tab");

        Assert.True(await visit.Page.EvaluateAsync<bool>("() => document.querySelector('main').contains(document.activeElement)"));
        visit.IsClean();
    }

    [Fact]
    public async Task A_tree_is_walked_to_an_end_and_back_by_keys_alone()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open(Tree);
        await visit.Page.Locator("body.walking").WaitForAsync();
        var seen = new List<string>();
        while (await visit.Page.Locator(".step:visible .ways a").CountAsync() > 0)
        {
            seen.Add(await visit.Page.Locator(".step:visible").GetAttributeAsync("id") ?? "");
            Assert.Equal(seen.Distinct(), seen);
            await PressOn(visit, ".step .walk-sure input", "Space");
            Assert.True(await PressOn(visit, ".step .ways a", "Enter"), "no answer is reached by Tab");
        }

        Assert.Equal(1, await visit.Page.Locator(".step:visible").CountAsync());
        Assert.True(await PressOn(visit, "#_walk-back", "Enter"), "the way back is not reached by Tab");
        Assert.Equal(seen[^1], await visit.Page.Locator(".step:visible").GetAttributeAsync("id"));
        visit.IsClean();
    }

    /// <summary>Goes by Tab to what is meant, if it stands in sight, and presses a key there.</summary>
    static async Task<bool> PressOn(Visit visit, string selector, string key)
    {
        if (await visit.Page.Locator(selector + ":visible").CountAsync() == 0) return false;
        for (var i = 0; i < 60; i++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
            if (!await IsOn(visit, selector)) continue;
            await visit.Page.Keyboard.PressAsync(key);
            return true;
        }

        return false;
    }

    static Task<bool> IsOn(Visit visit, string selector) => visit.Page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector);
}
