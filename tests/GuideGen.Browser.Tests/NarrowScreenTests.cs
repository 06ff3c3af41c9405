using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>A phone held upright: no page is wider than the screen, by day and by night.</summary>
public sealed class NarrowScreenTests(BrowserHouse house)
{
    const int PhoneWidth = 390;

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task No_kind_of_page_is_wider_than_a_phone(ColorScheme scheme)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ColorScheme = scheme, ViewportSize = new() { Width = PhoneWidth, Height = 844 } });
        var tooWide = new List<string>();
        foreach (var address in house.OneOfEveryKind())
        {
            await visit.Open(address);
            var width = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            if (width > PhoneWidth) tooWide.Add($"{address}: {width}");
        }

        Assert.Empty(tooWide);
        visit.IsClean();
    }
}
