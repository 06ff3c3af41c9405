using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>Without script a tree is linked sections: its answers lead on, step by step, to every end.</summary>
public sealed class PlainWalkTests(BrowserHouse house)
{
    [Fact]
    public async Task Without_script_every_leaf_of_every_tree_is_come_to_by_its_links()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { JavaScriptEnabled = false, ViewportSize = new() { Width = 390, Height = 800 } });
        var leaves = 0;
        foreach (var address in BrowserHouse.AddressesOf("trees"))
        {
            await visit.Open(address);
            leaves += await Walk(visit, address);
        }

        Assert.True(leaves > 200, $"{leaves} leaves");
        visit.IsClean();
    }

    /// <summary>Depth first: each answer is pressed that leads to a step not seen yet.</summary>
    /// <returns>How many ends were come to.</returns>
    static async Task<int> Walk(Visit visit, string address)
    {
        var steps = await StepsOf(visit.Page);
        var seen = new HashSet<string> { steps[0].Id };
        var open = new Stack<string>(seen);
        var leaves = 0;
        while (open.TryPop(out var id))
        {
            var ways = steps.Single(s => s.Id == id).Ways;
            if (ways.Length == 0) leaves++;
            foreach (var way in ways.Where(seen.Add))
            {
                await visit.Page.Locator($"#{id} .ways a[href='#{way}']").First.ClickAsync();
                Assert.True(await visit.Page.Locator($"#{way}:target h2").IsVisibleAsync(), $"{address}: from {id} one does not come to {way}");
                open.Push(way);
            }
        }

        Assert.Equal([], steps.Select(s => s.Id).Where(s => !seen.Contains(s)).Select(s => $"{address}: nothing leads to {s}"));
        return leaves;
    }

    static async Task<List<Step>> StepsOf(IPage page)
    {
        var lines = await page.Locator(".steps > .step").EvaluateAllAsync<string[]>(
            "steps => steps.map(s => [s.id, ...[...s.querySelectorAll('.ways a')].map(a => a.getAttribute('href').slice(1))].join(' '))");
        return [.. lines.Select(l => l.Split(' ')).Select(l => new Step(l[0], l[1..]))];
    }

    sealed record Step(string Id, string[] Ways);
}
