using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Drafting;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>An owner writes a case down and saves the file, which the guide then takes.</summary>
public sealed class CaseFormTests(BrowserHouse house)
{
    [Theory]
    [InlineData(BrowserHouse.FromFile)]
    [InlineData(BrowserHouse.FromServer)]
    public async Task The_saved_file_is_one_that_the_guide_takes(string from)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("faults/charge-air-hose-split.html");
        await visit.Follow(visit.Page.Locator("main a[href*='report-a-case.html']"), "report-a-case.html#f=charge-air-hose-split");
        await Fill(visit.Page);
        var download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.Locator("#_case-save").ClickAsync());
        await using var stream = await download.CreateReadStreamAsync();
        using var file = new MemoryStream();
        await stream.CopyToAsync(file, TestContext.Current.CancellationToken);
        var taken = CaseIntake.Check(new FolderFiles(Repository.Root), file.ToArray());

        Assert.Equal("2026-03-w20d-charge-air-hose-split.yml", download.SuggestedFilename);
        Assert.Empty(taken.Findings.Where(f => f.Severity == Severity.Error).Select(f => $"{f.Span}: {f.Message}"));
        Assert.Equal("content/cases/2026-03-w20d-charge-air-hose-split.yml", taken.Path);
        visit.IsClean();
    }

    [Fact]
    public async Task Nothing_is_saved_while_the_text_tells_who_wrote_it()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("report-a-case.html#f=charge-air-hose-split");
        await Fill(visit.Page);
        await visit.Page.FillAsync("textarea[name=note]", "Write to me at somebody@example.org");

        await Assertions.Expect(visit.Page.Locator("#_case-status")).ToContainTextAsync("somebody@example.org");
        Assert.False(await visit.Page.Locator("#_case-save").IsVisibleAsync());
        visit.IsClean();
    }

    static async Task Fill(IPage page)
    {
        await page.Locator("#_case").WaitForAsync();
        await page.FillAsync("input[name=date]", "2026-03-09");
        await page.FillAsync("input[name=distance]", "143,000");
        await page.GetByText("2.0 turbo-diesel", new() { Exact = true }).ClickAsync();
        await page.FillAsync("textarea[name=codes]", "P0299 confirmed\nP0101 pending");
        await page.GetByText("It drives otherwise").ClickAsync();
        await page.Locator("label:has(input[name='reduced-power'][value='present'])").ClickAsync();
        await page.FillAsync("textarea[name=changed]", "Charge-air hose\nTwo clips: 60-80 mm");
        await page.FillAsync("textarea[name=note]", "It said \"pop\", then: no boost.");
        await page.CheckAsync("input[name=cleared]");
        await page.SelectOptionAsync("select[name=codes-after]", "none");
        await page.Locator("#_case-save").WaitForAsync();
    }
}
