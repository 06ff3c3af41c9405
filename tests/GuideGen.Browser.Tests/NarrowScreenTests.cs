namespace GuideGen.Browser.Tests;

/// <summary>
/// A phone held upright, the smallest screen, and a wide one enlarged four times, which leaves 320 px (WCAG 2.2, 1.4.10):
/// no page is wider than the screen.
/// </summary>
public sealed class NarrowScreenTests(BrowserHouse house)
{
    [Theory]
    [InlineData(390)]
    [InlineData(320)]
    public async Task No_kind_of_page_is_wider_than_the_screen(int width)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = width, Height = 844 } });
        var tooWide = new List<string>();
        foreach (var address in house.ExtremesOfEveryKind())
        {
            await visit.Open(address);
            await visit.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
            var taken = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            if (taken > width) tooWide.Add($"{address}: {taken}");
        }

        Assert.Empty(tooWide);
        visit.IsClean();
    }
}
