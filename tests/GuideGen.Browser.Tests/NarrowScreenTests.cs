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

    /// <summary>Letters twice as large (WCAG 2.2, 1.4.4) and set wider (1.4.12), on the screen of a phone.</summary>
    [Theory]
    [InlineData(390, "html { font-size: 200% !important; }")]
    [InlineData(320, "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }")]
    public async Task Larger_and_wider_letters_stay_on_the_screen(int width, string style)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = width, Height = 844 }, BypassCSP = true });
        var tooWide = new List<string>();
        foreach (var address in house.ExtremesOfEveryKind())
        {
            await visit.Open(address);
            await visit.Page.AddStyleTagAsync(new() { Content = style });
            await visit.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
            var taken = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            if (taken > width) tooWide.Add($"{address}: {taken}");
        }

        Assert.Empty(tooWide);
    }
}
