namespace GuideGen.Browser.Tests;

/// <summary>After one visit to a host the whole guide is on the device: every page opens and the search works with no signal.</summary>
public sealed class OfflineTests(BrowserHouse house)
{
    [Fact]
    public async Task With_the_network_off_every_page_opens_and_the_search_works()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open("index.html");
        await visit.Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null", null, new() { Timeout = 120_000 });
        await visit.Page.Context.SetOfflineAsync(true);

        foreach (var address in house.ExtremesOfEveryKind())
        {
            await visit.Open(address);
            Assert.NotEmpty(await visit.Page.Locator("h1").InnerTextAsync());
        }

        await visit.Page.FillAsync("#_find-box", "whistle under load");
        Assert.Equal("symptoms/whistle-under-load.html", await visit.Page.Locator("#_find-list li").First.GetAttributeAsync("data-href"));
        visit.IsClean();
    }

    [Fact]
    public async Task An_address_that_the_guide_does_not_have_is_told_so_with_the_network_off()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open("index.html");
        await visit.Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null", null, new() { Timeout = 120_000 });
        await visit.Page.Context.SetOfflineAsync(true);
        await visit.Open("faults/no-such-fault.html");

        Assert.Equal("This page is not here", await visit.Page.Locator("h1").InnerTextAsync());
    }
}
