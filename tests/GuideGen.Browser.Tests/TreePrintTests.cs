using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>A tree on paper: all steps, whatever the walk on the screen stands at, and the drawing of the whole on one page.</summary>
public sealed class TreePrintTests(BrowserHouse house)
{
    // A4 between margins of 1 cm, in CSS pixels.
    const int PaperWidth = 718, PaperHeight = 1046;

    // Letters of 14 units are then 5 points high, which is small and can be read. Common practice, no source.
    const double LeastScale = 5 / 0.75 / 14;

    [Fact]
    public async Task Every_tree_prints_all_its_steps_and_its_drawing_on_one_page()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = PaperWidth, Height = PaperHeight } });
        var wrong = new List<string>();
        foreach (var address in BrowserHouse.AddressesOf("trees"))
        {
            await visit.Page.EmulateMediaAsync(new() { Media = Media.Screen });
            await visit.Open(address);
            await visit.Page.Locator("body.walking").WaitForAsync();
            await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
            var sheet = await visit.Page.EvaluateAsync<Sheet>("""
                () => {
                  const drawing = document.querySelector(".tree-drawing"), size = drawing.getBoundingClientRect();
                  return {
                    hidden: [...document.querySelectorAll(".step")].filter(s => !s.checkVisibility()).length,
                    buttons: [...document.querySelectorAll(".walk, .walk-bar")].filter(s => s.checkVisibility()).length,
                    width: size.width, height: size.height, scale: size.height / drawing.viewBox.baseVal.height,
                  };
                }
                """);
            if (sheet is not { Hidden: 0, Buttons: 0, Width: <= PaperWidth, Height: <= PaperHeight, Scale: >= LeastScale }) wrong.Add($"{address}: {sheet}");
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        visit.IsClean();
    }

    sealed record Sheet
    {
        public int Hidden { get; init; }

        public int Buttons { get; init; }

        public double Width { get; init; }

        public double Height { get; init; }

        public double Scale { get; init; }
    }
}
