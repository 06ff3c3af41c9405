using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>What a first visit moves over the line, packed by gzip, until the page has settled. Keeping the guide on the device comes after, and is left out.</summary>
public sealed class PageWeightTests(BrowserHouse house)
{
    const int Home = 60 * 1024;
    const int Fault = 40 * 1024;

    [Fact]
    public async Task A_first_visit_to_the_home_page_moves_at_most_sixty_kilobytes()
    {
        var (bytes, count) = await Moved("index.html");

        Assert.True(bytes <= Home, $"{bytes} bytes");
        Assert.InRange(count, 4, 8);
    }

    [Fact]
    public async Task A_first_visit_to_a_fault_page_moves_at_most_forty_kilobytes()
    {
        var tooHeavy = new List<string>();
        foreach (var address in BrowserHouse.AddressesOf("faults").OrderByDescending(house.Size).Take(6))
        {
            var (bytes, count) = await Moved(address);
            if (bytes > Fault) tooHeavy.Add($"{address}: {bytes} bytes");
            Assert.InRange(count, 5, 12);
        }

        Assert.Empty(tooHeavy);
    }

    async Task<(int Bytes, int Count)> Moved(string address)
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer, new() { ServiceWorkers = ServiceWorkerPolicy.Block });
        var requests = new List<IRequest>();
        visit.Page.RequestFinished += (_, request) => requests.Add(request);
        await visit.Open(address);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var bytes = 0;
        foreach (var request in requests.Where(r => r.ResourceType != "image"))
        {
            var sizes = await request.SizesAsync();
            bytes += sizes.ResponseBodySize + sizes.ResponseHeadersSize;
        }

        TestContext.Current.SendDiagnosticMessage($"{address}: {bytes} bytes in {requests.Count} answers");
        return (bytes, requests.Count);
    }
}
