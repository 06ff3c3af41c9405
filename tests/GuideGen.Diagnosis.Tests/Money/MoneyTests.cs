using CsCheck;
using GuideGen.Diagnosis.Money;

namespace GuideGen.Diagnosis.Tests.Money;

public sealed class MoneyTests
{
    static readonly RepairChoice Example = new(new()
    {
        Parts = MoneyRange.Exactly(68),
        Consumables = MoneyRange.Exactly(9),
        ToolShare = 12,
        OwnHours = 2.5m,
        ChanceOfCure = 0.8m,
        DiagnosisHours = 1.0m,
        WorkshopHours = 1.6m,
        WorkshopRate = 95,
        PartsMarkup = 0.35m,
        Tax = 0.19m,
        TransportHours = 0.75m,
    });

    // Arithmetic of an invented job, worked by hand.
    [Fact]
    public void Own_work_and_workshop_are_summed_in_full()
    {
        Assert.Equal(MoneyRange.Exactly(338.80m), new RepairChoice(Example.Costs with { Tax = 0 }).WorkshopBill);
        Assert.Equal(MoneyRange.Exactly(403.172m), Example.WorkshopBill);
        Assert.Equal(MoneyRange.Exactly(89), Example.OwnCash);
        Assert.Equal(MoneyRange.Exactly(169.6344m), Example.OwnCashExpected);
        Assert.Equal(MoneyRange.Exactly(219.6344m), Example.Own(20));
        Assert.Equal(MoneyRange.Exactly(418.172m), Example.Workshop(20));
    }

    [Fact]
    public void Break_evens_are_where_both_cost_the_same()
    {
        Assert.Equal(133.4501, (double)Example.BreakEvenHourValue!, 5.1e-5);
        Assert.Equal(0.307561, (double)Example.BreakEvenChance(20)!, 6e-7);
        RepairChoice walked = new(Example.Costs with { TransportHours = 0 });
        Assert.Equal(93.4150, (double)walked.BreakEvenHourValue!, 5.1e-5);
    }

    [Fact]
    public void Break_even_hour_value_makes_both_cost_the_same_on_random_jobs() => Jobs.Sample(costs =>
    {
        RepairChoice choice = new(costs);
        if (choice.BreakEvenHourValue is { } hour)
            Assert.Equal((double)choice.Own(hour).Middle, (double)choice.Workshop(hour).Middle, 1e-6);
        decimal chance = choice.BreakEvenChance(30)!.Value;
        if (chance is < 0 or > 1)
            return;
        RepairChoice level = new(costs with { ChanceOfCure = chance });
        Assert.Equal((double)level.Own(30).Middle, (double)level.Workshop(30).Middle, 1e-6);
    });

    [Fact]
    public void Range_of_a_price_stays_a_range()
    {
        RepairChoice choice = new(Example.Costs with { Parts = new(35, 80) });

        Assert.True(choice.WorkshopBill.Low < choice.WorkshopBill.High);
        Assert.Equal(new MoneyRange(56, 101), choice.OwnCash);
        Assert.Throws<ArgumentOutOfRangeException>(() => -1 * choice.OwnCash);
    }

    [Fact]
    public void Nothing_of_a_price_is_nothing() => Assert.Equal(MoneyRange.Exactly(0), 0 * new MoneyRange(35, 80));

    [Fact]
    public void Workshop_that_costs_nothing_has_no_break_even() =>
        Assert.Null(new RepairChoice(Example.Costs with { Parts = MoneyRange.Exactly(0), WorkshopRate = 0 }).BreakEvenChance(20));

    [Fact]
    public void A_test_that_costs_what_it_saves_is_left_out() => Assert.False(new TestOrReplace(48, 120, 0.6).TestFirst);

    [Fact]
    public void Own_work_as_short_as_the_way_to_the_workshop_has_no_break_even() =>
        Assert.Null(new RepairChoice(Example.Costs with { OwnHours = 0.75m }).BreakEvenHourValue);

    // Source: threshold rule of S. Pauker, J. Kassirer 1980, NEJM 302:1109-1117, with invented sums.
    [Fact]
    public void Cheap_test_goes_before_a_dear_part()
    {
        TestOrReplace choice = new(25, 120, 0.6);

        Assert.Equal(48, choice.LossUntested, 1e-9);
        Assert.True(choice.TestFirst);
        Assert.Equal(0.791667, choice.ReplaceAbove, 5e-7);
        Assert.False((choice with { ChanceFaulty = 0.8 }).TestFirst);
        Assert.Equal(0, new TestOrReplace(130, 120, 0.1).ReplaceAbove);
    }

    // Source: Bayes' rule with sensitivity 0.9 and specificity 0.95.
    [Theory]
    [InlineData(true, 0.964286)]
    [InlineData(false, 0.136364)]
    public void Test_that_can_err_moves_the_chance(bool saysFaulty, double chance) =>
        Assert.Equal(chance, new TestOrReplace(25, 120, 0.6).ChanceAfter(0.9, 0.95, saysFaulty), 5e-7);

    static readonly Gen<RepairCosts> Jobs =
        from price in Gen.Int[0, 900]
        from own in Gen.Int[5, 120]
        from labour in Gen.Int[3, 80]
        from rate in Gen.Int[40, 160]
        from cure in Gen.Int[10, 100]
        select new RepairCosts
        {
            Parts = new(price, price * 2),
            OwnHours = own / 10m,
            ChanceOfCure = cure / 100m,
            WorkshopHours = labour / 10m,
            WorkshopRate = rate,
            Tax = 0.19m,
            TransportHours = 0.4m,
        };
}
