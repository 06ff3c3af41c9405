using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>A file that does not come, as on a bad line: the page says so, says what to do instead, and does not break.</summary>
public sealed class LostFileTests(BrowserHouse house)
{
    [Theory]
    [InlineData("index.html", "search-best", "#_find-box", "turbo hose", "#_find-status", "The search could not be loaded.")]
    [InlineData("report.html", "codes-read", "#_report-text", "P0299", "#_report-status", "Every code is on the page “Codes”.")]
    [InlineData("checks/boost-live-drive.html", "reading-judge", ".judge input[name=value]", "1.30", ".judge .verdict", "Compare it by eye with the limits above.")]
    [InlineData("faults/charge-air-hose-split.html", "repair-choice", ".money-form input[name=chance]", "50", ".money-said", "The numbers above hold.")]
    [InlineData("weigh.html", "ranking", null, null, "#_weigh-status", "The pages of codes and symptoms lead to the same causes.")]
    [InlineData("report-a-case.html", "case-file", null, null, "main", "A case can be sent in plain words as well.")]
    public async Task A_page_says_what_it_cannot_do_without_it(string address, string lost, string? field, string? value, string place, string said)
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Page.RouteAsync($"**/assets/{lost}.*", route => route.AbortAsync());
        await visit.Open(address);
        if (field is not null)
        {
            await visit.Page.Locator(field).First.FillAsync(value!);
            await visit.Page.Locator(field).First.EvaluateAsync("field => field.form.requestSubmit()");
        }

        await Assertions.Expect(visit.Page.Locator(place).First).ToContainTextAsync(said);
    }

    [Fact]
    public async Task A_file_that_comes_the_second_time_is_used()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        var isLost = new TaskCompletionSource();
        await visit.Page.RouteAsync("**/assets/search-best.*", route => { isLost.TrySetResult(); return route.AbortAsync(); }, new() { Times = 1 });
        await visit.Open("index.html");
        await visit.Page.FocusAsync("#_find-box");
        await isLost.Task;

        await visit.Page.FillAsync("#_find-box", "turbo hose");
        Assert.Equal("parts/charge-air-hose.html", await visit.Page.Locator("#_find-list li").First.GetAttributeAsync("data-href"));
    }
}
