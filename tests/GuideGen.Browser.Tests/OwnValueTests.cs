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
        await using var visit = await Open("boost-live-drive");
        var form = visit.Page.Locator("form.judge").First;
        await form.Locator("select[name=unit]").SelectOptionAsync(unit);
        await form.Locator("input[name=value]").FillAsync(value);

        await form.Locator("." + verdict).WaitForAsync();
        Assert.NotEqual("", await form.Locator(".verdict").InnerTextAsync());
        visit.IsClean();
    }

    // The air's pressure by the standard atmosphere (ISO 2533:1975): 101.3 kPa at the sea, 79.5 at 2,000 m, 70.1 at 3,000 m.
    [Theory]
    [InlineData("0", "", "verdict-pass")]
    [InlineData("2000", "", "verdict-tooClose")]
    [InlineData("3000", "", "verdict-tooHigh")]
    [InlineData("3000", "101.3", "verdict-pass")]
    public async Task An_absolute_pressure_is_judged_by_the_height_or_the_air_s_own(string altitude, string ambient, string verdict)
    {
        await using var visit = await Open("boost-live-drive");
        var form = visit.Page.Locator("form.judge").First;
        Assert.False(await form.Locator(".judge-air").IsVisibleAsync());
        await form.Locator("input[name=value]").FillAsync("2.30");
        await form.Locator("select[name=shows]").SelectOptionAsync("absolute");
        await form.Locator("input[name=altitude]").FillAsync(altitude);
        await form.Locator("input[name=ambient]").FillAsync(ambient);

        await form.Locator("." + verdict).WaitForAsync();
        visit.IsClean();
    }

    // 68 °F are 20 °C, where the page allows 2.28 to 2.72 kilohms.
    [Theory]
    [InlineData("2.50", "68", "0", "verdict-pass")]
    [InlineData("2.95", "68", "0", "verdict-tooHigh")]
    [InlineData("2.95", "68", "4", "verdict-tooClose")]
    [InlineData("2.10", "68", "0", "verdict-tooLow")]
    [InlineData("2.50", "", "0", "verdict-needKey")]
    public async Task A_resistance_is_judged_by_the_temperature_and_how_well_it_is_known(string value, string key, string doubt, string verdict)
    {
        await using var visit = await Open("temperature-sensor-resistance");
        var form = visit.Page.Locator("form.judge").First;
        await form.Locator("select[name=unit]").SelectOptionAsync("kohm");
        await form.Locator("select[name=keyUnit]").SelectOptionAsync("degF");
        await form.Locator("input[name=key]").FillAsync(key);
        await form.Locator("input[name=keyDoubt]").FillAsync(doubt);
        await form.Locator("input[name=value]").FillAsync(value);

        await form.Locator("." + verdict).WaitForAsync();
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

    async Task<Visit> Open(string check)
    {
        var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open($"checks/{check}.html");
        return visit;
    }
}
