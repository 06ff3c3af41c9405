using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>Nothing jumps under a thumb when scripts come long after the page: the layout shifts by less than 0.1, which the Web Vitals count as good.</summary>
public sealed class SteadyPageTests(BrowserHouse house)
{
    const double Good = 0.1;
    const int Late = 400;

    const string Shifted = """
        async () => {
          const entries = [];
          new PerformanceObserver(list => entries.push(...list.getEntries())).observe({ type: "layout-shift", buffered: true });
          await new Promise(done => setTimeout(done, 300));
          return entries.reduce((sum, e) => sum + (e.hadRecentInput ? 0 : e.value), 0);
        }
        """;

    [Theory]
    [InlineData("index.html", "#_find")]
    [InlineData("faults/charge-air-hose-split.html", "")]
    [InlineData("trees/no-cold-air.html", "")]
    [InlineData("weigh.html", "#_weigh")]
    [InlineData("report-a-case.html", "#_case")]
    public async Task A_page_stands_still_when_its_scripts_come_late(string address, string shown)
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer, new() { ViewportSize = new() { Width = 390, Height = 844 }, ServiceWorkers = ServiceWorkerPolicy.Block });
        await visit.Page.RouteAsync("**/*.js", async route =>
        {
            await Task.Delay(Late, TestContext.Current.CancellationToken);
            await route.ContinueAsync();
        });
        await visit.Open(address);
        if (shown.Length > 0) await visit.Page.Locator(shown).WaitForAsync();

        Assert.InRange(await visit.Page.EvaluateAsync<double>(Shifted), 0, Good);
    }
}
