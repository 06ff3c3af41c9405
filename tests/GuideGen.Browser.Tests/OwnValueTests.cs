using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>An owner's own numbers: a reading on a check page, money on a fault page.</summary>
public sealed class OwnValueTests(BrowserHouse house)
{
    [Theory]
    [InlineData("1.30", "bar", "verdict-pass")]
    [InlineData("19", "psi", "verdict-tooClose")]
    [InlineData("19.0", "psi", "verdict-pass")]
    [InlineData("1.00", "bar", "verdict-tooLow")]
    [InlineData("1,300", "bar", "verdict-number")]
    public async Task A_pressure_passes_fails_or_is_too_close(string value, string unit, string verdict)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("checks/boost-live-drive.html");
        var form = visit.Page.Locator("form.judge").First;
        await form.Locator("select[name=unit]").SelectOptionAsync(unit);
        await form.Locator("input[name=value]").FillAsync(value);

        await form.Locator("." + verdict).WaitForAsync();
        Assert.NotEqual("", await form.Locator(".verdict").InnerTextAsync());
        visit.IsClean();
    }

    [Fact]
    public async Task A_sensors_value_is_marked_on_its_curve()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("checks/temperature-sensor-resistance.html");
        var reading = visit.Page.Locator(".reading").First;
        await reading.Locator("input[name=value]").FillAsync("2.5");
        await reading.Locator("select[name=unit]").SelectOptionAsync("kohm");
        await reading.Locator("input[name=key]").FillAsync("20");
        await reading.Locator(".verdict-pass").WaitForAsync();

        Assert.Equal("visible", await reading.Locator(".curve-mark").GetAttributeAsync("visibility"));
        await reading.Locator("input[name=key]").FillAsync("95");
        await reading.Locator(".verdict-outside").WaitForAsync();
        Assert.Equal("hidden", await reading.Locator(".curve-mark").GetAttributeAsync("visibility"));
        visit.IsClean();
    }

    [Fact]
    public async Task Own_numbers_turn_the_choice_between_own_work_and_a_workshop()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("faults/charge-air-hose-split.html");
        var given = visit.Page.Locator(".money-form details input");
        Assert.Equal(["1", "1", "35", "19", "0"], await given.EvaluateAllAsync<string[]>("fields => fields.map(f => f.value)"));

        await visit.Page.Locator(".money-form input[name=chance]").FillAsync("0");
        await Assertions.Expect(visit.Page.Locator(".money-said")).ToContainTextAsync("The workshop is cheaper even if your time costs nothing.");

        await visit.Page.Locator(".money-form input[name=chance]").FillAsync("lots");
        await Assertions.Expect(visit.Page.Locator(".money-said")).ToContainTextAsync("number");
        visit.IsClean();
    }
}
