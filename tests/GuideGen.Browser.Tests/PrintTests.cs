using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>What is taken to the vehicle on paper: at most two sheets, cautions before the first thing to do, room to tick and to write.</summary>
public sealed partial class PrintTests(BrowserHouse house)
{
    [Theory]
    [InlineData("Letter", 1)]
    [InlineData("A4", 6)] // Longer by eighteen millimetres, so what fits on Letter fits here.
    public async Task A_fault_page_takes_at_most_two_sheets(string format, int everyNth)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        var tooLong = new List<string>();
        foreach (var address in BrowserHouse.AddressesOf("faults").Where((_, i) => i % everyNth == 0))
        {
            var sheets = await Sheets(visit, address, format);
            if (sheets > 2) tooLong.Add($"{address}: {sheets}");
        }

        Assert.Empty(tooLong);
    }

    [Theory]
    [InlineData("record.html", 1)]
    // All its steps with their cautions, and the drawing of the whole on a page of its own.
    [InlineData("trees/no-cold-air.html", 4)]
    public async Task A_sheet_stays_a_sheet(string address, int most)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        foreach (var format in new[] { "A4", "Letter" }) Assert.InRange(await Sheets(visit, address, format), 1, most);
    }

    [Fact]
    public async Task On_paper_cautions_come_first_and_steps_have_boxes()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("faults/charge-air-hose-split.html");
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        var tops = await visit.Page.EvaluateAsync<double[]>(
            "() => ['h1', '.plate', '.section-safety', '.glance', '#confirm-it', '.paper'].map(s => document.querySelector(s).getBoundingClientRect().top)");
        var boxes = await visit.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('#put-it-right ~ ol > li')].map(li => getComputedStyle(li, '::before').borderTopStyle)");

        Assert.Equal(tops.Order(), tops);
        Assert.NotEmpty(boxes);
        Assert.All(boxes, b => Assert.Equal("solid", b));
        foreach (var hidden in new[] { ".head", ".foot", ".money", "#_cases" }) Assert.False(await visit.Page.Locator(hidden).First.IsVisibleAsync(), hidden);
        visit.IsClean();
    }

    static async Task<int> Sheets(Visit visit, string address, string format)
    {
        await visit.Open(address);
        var pdf = await visit.Page.PdfAsync(new() { Format = format });
        return PageObject().Count(Encoding.Latin1.GetString(pdf));
    }

    /// <summary>A page object of ISO 32000-1, 7.7.3.3; the tree above it is of type Pages.</summary>
    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PageObject();
}
