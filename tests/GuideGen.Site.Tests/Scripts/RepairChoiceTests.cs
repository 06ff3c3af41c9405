using GuideGen.Diagnosis.Money;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Scripts;

/// <summary>The form on fault pages reckons as the build does.</summary>
public sealed class RepairChoiceTests : IDisposable
{
    const double Near = 1e-9;

    readonly SiteScripts scripts = new(CompiledSite.Of(Guides.Small), "assets/repair-choice.js");

    public void Dispose() => scripts.Dispose();

    static readonly (RepairCosts Costs, decimal HourValue)[] Cases =
    [
        (Costs(68, 68, 9, 12, 2.5m, 0.8m, 1.6m) with { DiagnosisHours = 1, PartsMarkup = 0.35m, Tax = 0.19m, TransportHours = 0.75m }, 20),
        (Costs(35, 80, 6, 0, 1.5m, 0.8m, 1.2m), 20),
        (Costs(900, 1400, 0, 0, 12, 0.4m, 9), 45),
        (Costs(0, 0, 0, 0, 0.5m, 1, 0), 20),
        (Costs(10, 12, 0, 0, 0.5m, 1, 0.5m) with { TransportHours = 1 }, 0),
    ];

    public static TheoryData<int> Rows => new(Enumerable.Range(0, Cases.Length));

    [Theory, MemberData(nameof(Rows))]
    public void The_browser_reckons_as_the_build(int row)
    {
        var (costs, hourValue) = Cases[row];
        var expected = new RepairChoice(costs);
        var said = scripts.Call<Said>("GuideGen.repairChoice.choose", costs, hourValue);

        Same(expected.Own(hourValue), said.Own);
        Same(expected.Workshop(hourValue), said.Workshop);
        Same(expected.BreakEvenHourValue, said.BreakEvenHourValue);
        Same(expected.BreakEvenChance(hourValue), said.BreakEvenChance);
    }

    // Worked by hand: bill (1.0 + 1.6) x 95 + 68 x 1.35 = 338.80, with 19 % tax 403.172; own cash 89 + 0.2 x 403.172 = 169.6344.
    [Fact]
    public void A_worked_example_comes_out()
    {
        var said = scripts.Call<Said>("GuideGen.repairChoice.choose", Costs(68, 68, 9, 12, 2.5m, 0.8m, 1.6m) with { DiagnosisHours = 1, PartsMarkup = 0.35m, Tax = 0.19m, TransportHours = 0.75m }, 20);

        Assert.Equal(219.6344, said.Own.Low, 4);
        Assert.Equal(418.172, said.Workshop.Low, 4);
        Assert.Equal(133.4501, said.BreakEvenHourValue!.Value, 4);
        Assert.Equal(0.307561, said.BreakEvenChance!.Value, 6);
    }

    static RepairCosts Costs(decimal low, decimal high, decimal consumables, decimal tools, decimal own, decimal chance, decimal workshop) => new()
    {
        Parts = new MoneyRange(low, high),
        Consumables = MoneyRange.Exactly(consumables),
        ToolShare = tools,
        OwnHours = own,
        ChanceOfCure = chance,
        WorkshopHours = workshop,
        WorkshopRate = 95,
    };

    static void Same(MoneyRange expected, Bounds actual)
    {
        Assert.Equal((double)expected.Low, actual.Low, Near);
        Assert.Equal((double)expected.High, actual.High, Near);
    }

    static void Same(decimal? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        Assert.Equal((double)(expected ?? 0), actual ?? 0, Near);
    }

    sealed record Said(Bounds Own, Bounds Workshop, double? BreakEvenHourValue, double? BreakEvenChance);

    sealed record Bounds(double Low, double High);
}
