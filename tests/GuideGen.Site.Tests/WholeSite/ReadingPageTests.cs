using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>Readings on check pages as they stand without script.</summary>
public sealed class ReadingPageTests
{
    static readonly CompiledSite Demo = CompiledSite.Of(Guides.Demo);

    [Fact]
    public void Limits_stand_in_both_unit_systems_the_guides_own_first()
    {
        var limits = Demo.Pages["checks/boost-live-drive.html"].Document.QuerySelector(".limits")!;

        Assert.Equal("1.2 to 1.45 bar (17.4 to 21 psi)", limits.TextContent.Trim());
    }

    [Fact]
    public void A_table_has_a_curve_with_a_row_for_each_of_its_rows()
    {
        var reading = Demo.Pages["checks/temperature-sensor-resistance.html"].Document.QuerySelector(".reading-table")!;

        Assert.Equal(reading.QuerySelectorAll("tbody tr").Length, reading.QuerySelectorAll(".curve-row").Length);
        Assert.Contains("Intake-air temperature sensor resistance", reading.QuerySelector("svg")!.GetAttribute("aria-label")!, StringComparison.Ordinal);
        Assert.Equal("-10 (14)", reading.QuerySelector("tbody th")!.TextContent);
    }

    [Fact]
    public void The_field_to_judge_a_value_is_not_offered_without_script() =>
        Assert.All(
            Demo.Pages.Where(p => p.Key.StartsWith("checks/", StringComparison.Ordinal)).SelectMany(p => p.Value.Document.QuerySelectorAll("form.judge")),
            form => Assert.True(form.HasAttribute("hidden")));
}
