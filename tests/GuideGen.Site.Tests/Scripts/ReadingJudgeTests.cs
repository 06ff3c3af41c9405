using System.Text.Json;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Scripts;

/// <summary>An owner's own value on a check page: in any unit, on either scale, with the meter's error.</summary>
public sealed class ReadingJudgeTests : IDisposable
{
    static readonly CompiledSite Demo = CompiledSite.Of(Guides.Demo);

    readonly SiteScripts scripts = new(Demo, "assets/readings.js", "assets/reading-judge.js");

    public void Dispose() => scripts.Dispose();

    // Boost of the diesel on its check page: 1.2 to 1.45 bar gauge. Factors: NIST SP 811. Air: ISO 2533, 101.325 kPa at sea level.
    [Theory]
    [InlineData("1.30", "bar", "gauge", "0", "pass")]
    [InlineData("19.0", "psi", "gauge", "0", "pass")]
    [InlineData("135", "kPa", "gauge", "0", "pass")]
    [InlineData("1.21", "bar", "gauge", "0", "tooClose")]
    [InlineData("1.00", "bar", "gauge", "0", "tooLow")]
    [InlineData("24,5", "psi", "gauge", "0", "tooHigh")]
    [InlineData("234", "kPa", "absolute", "0", "pass")]
    [InlineData("234", "kPa", "absolute", "1500", "tooClose")]
    [InlineData("240", "kPa", "absolute", "1500", "tooHigh")]
    [InlineData("1,300", "bar", "gauge", "0", "number")]
    [InlineData("1.3 bar", "bar", "gauge", "0", "number")]
    [InlineData("", "bar", "gauge", "0", "number")]
    public void A_pressure_is_judged_in_any_unit_and_scale(string value, string unit, string shows, string altitude, string verdict) =>
        Assert.Equal(verdict, Judge("checks/boost-live-drive.html", 0, new { value, unit, shows, altitude, ambient = "", percent = "1", digits = "2" }));

    // The van's own barometer outranks the height: 2.34 bar absolute at 85 kPa is 1.49 bar gauge.
    [Fact]
    public void Air_pressure_that_the_vehicle_shows_outranks_the_height() =>
        Assert.Equal("tooHigh", Judge("checks/boost-live-drive.html", 0, new { value = "234", unit = "kPa", shows = "absolute", altitude = "0", ambient = "85", percent = "0", digits = "0" }));

    // Intake-air sensor on its check page: 2280 to 2720 ohm at 20 degrees, 1070 to 1290 at 40.
    [Theory]
    [InlineData("2500", "ohm", "20", "degC", "0", "pass")]
    [InlineData("2.50", "kohm", "68", "degF", "0", "pass")]
    [InlineData("2900", "ohm", "20", "degC", "0", "tooHigh")]
    [InlineData("2900", "ohm", "20", "degC", "4", "pass")]
    [InlineData("2270", "ohm", "20", "degC", "0", "tooClose")]
    [InlineData("1620", "ohm", "30", "degC", "0", "pass")]
    [InlineData("400", "ohm", "80", "degC", "0", "outside")]
    [InlineData("600", "ohm", "59", "degC", "2", "outside")]
    [InlineData("2500", "ohm", "", "degC", "2", "needKey")]
    public void A_value_over_temperature_is_judged_with_the_doubt_of_both(string value, string unit, string key, string keyUnit, string keyDoubt, string verdict) =>
        Assert.Equal(verdict, Judge("checks/temperature-sensor-resistance.html", 0, new { value, unit, key, keyUnit, keyDoubt, percent = "0.5", digits = "2" }));

    // Worked example: plus or minus (0.5 % + 2 digits) at 2.500 kOhm, 1 Ohm digit, is 14.5 Ohm (JCGM 106:2012 guard band).
    [Fact]
    public void The_meters_error_is_per_cent_and_digits_together()
    {
        var judged = scripts.Call<JsonElement>("GuideGen.readingJudge.judge", Reading("checks/temperature-sensor-resistance.html", 0), new { value = "2.500", unit = "kohm", key = "20", keyUnit = "degC", keyDoubt = "0", percent = "0.5", digits = "2" });

        Assert.Equal(14.5, judged.GetProperty("uncertainty").GetDouble(), 9);
        Assert.Equal(2500, judged.GetProperty("value").GetDouble(), 9);
    }

    string Judge(string page, int reading, object entered) =>
        scripts.Call<JsonElement>("GuideGen.readingJudge.judge", Reading(page, reading), entered).GetProperty("verdict").GetString()!;

    static JsonElement Reading(string page, int number) =>
        JsonSerializer.Deserialize<JsonElement>(Demo.Pages[page].Document.QuerySelectorAll("form.judge")[number].GetAttribute("data-reading")!);
}
