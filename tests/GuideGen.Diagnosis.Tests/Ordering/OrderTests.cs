using System.Collections.Immutable;
using GuideGen.Diagnosis.Ordering;

namespace GuideGen.Diagnosis.Tests.Ordering;

/// <summary>
/// Rules: W. E. Smith 1956, NRLQ 3:59-66; H. Simon, J. Kadane 1975, AI 6:235-247; J. Kalagnanam, M. Henrion 1988, UAI 4.
/// Figures: every order of the example tried, in another program.
/// </summary>
public sealed class OrderTests
{
    static readonly OrderProblem Five = Problem(
        Convention.ConfirmEvery, ("1", 0.40, 30), ("2", 0.25, 10), ("3", 0.15, 5), ("4", 0.12, 20), ("5", 0.08, 15));

    // Source for sharing: T. J. Ottosen, F. V. Jensen 2010, arXiv 1203.3502 (the effect; the figures are ours).
    static readonly OrderProblem Tray = new(
        [
            new("P", 0.3, new(10), ["tray"], []), new("Q", 0.3, new(10), ["tray"], []), new("R", 0.4, new(22), [], []),
        ],
        [new("tray", new(20))],
        Convention.ConfirmEvery,
        CostScale.MinutesOnly);

    [Fact]
    public void Falling_probability_per_cost_is_best_when_every_cause_is_confirmed()
    {
        CheckOrder best = CheckOrders.Best(Five);

        Assert.Equal(["3", "2", "1", "4", "5"], best.Checks);
        Assert.Equal(36.7, best.Cost, 1e-9);
        Assert.Equal(new Effort(80), best.Worst);
        Assert.Equal(OrderMethod.RatioRule, best.Method);
    }

    [Theory]
    [InlineData("1 2 3 4 5", 42.95)]
    [InlineData("3 2 5 4 1", 44.9)]
    public void Other_orders_cost_more(string order, double cost) =>
        Assert.Equal(cost, CheckOrders.Of(Five, order.Split(' ')).Cost, 1e-9);

    [Fact]
    public void Best_second_and_worst_of_all_orders_are_as_in_the_example()
    {
        double[] costs = [.. BruteForceTests.Permutations(["1", "2", "3", "4", "5"]).Select(o => CheckOrders.Of(Five, o).Cost).Order()];

        Assert.Equal(120, costs.Length);
        Assert.Equal([36.7, 36.9, 62.15], [costs[0], costs[1], costs[^1]], (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void Inferring_the_last_cause_needs_another_order()
    {
        OrderProblem infer = Five with { Convention = Convention.InferLast };
        CheckOrder best = CheckOrders.Best(infer);

        Assert.Equal(["3", "2", "4", "5", "1"], best.Checks);
        Assert.Equal(32.7, best.Cost, 1e-9);
        Assert.Equal(OrderMethod.LeaveOneRule, best.Method);
        Assert.Equal(35.5, CheckOrders.Of(infer, ["3", "2", "1", "4", "5"]).Cost, 1e-9);
    }

    [Fact]
    public void Shared_preparation_changes_the_order()
    {
        CheckOrder best = CheckOrders.Best(Tray);

        Assert.Equal(["R", "P", "Q"], best.Checks);
        Assert.Equal(43.0, best.Cost, 1e-9);
        Assert.Equal(OrderMethod.EverySet, best.Method);
        Assert.Equal(45.8, CheckOrders.Of(Tray, ["P", "Q", "R"]).Cost, 1e-9);
    }

    [Fact]
    public void Equal_checks_go_by_id_whatever_order_they_come_in()
    {
        OrderProblem even = Problem(Convention.ConfirmEvery, ("c", 0.1, 3), ("a", 0.2, 6), ("b", 0.3, 9));

        Assert.Equal(["a", "b", "c"], CheckOrders.Best(even).Checks);
        Assert.Equal(["a", "b", "c"], CheckOrders.Best(even with { Checks = [.. even.Checks.Reverse()] }).Checks);
    }

    [Fact]
    public void Equal_checks_go_by_id_where_the_last_is_inferred()
    {
        OrderProblem even = Problem(Convention.InferLast, ("c", 0.2, 3), ("a", 0.2, 3), ("b", 0.2, 3));

        Assert.Equal(["a", "b", "c"], CheckOrders.Best(even).Checks);
    }

    [Fact]
    public void What_takes_no_time_goes_first_even_where_it_finds_nothing() =>
        Assert.Equal(["free", "likely"], CheckOrders.Best(Problem(Convention.ConfirmEvery, ("likely", 0.5, 1), ("free", 0, 0))).Checks);

    [Theory]
    [InlineData(16, OrderMethod.EverySet)]
    [InlineData(17, OrderMethod.Blocks)]
    public void Sixteen_checks_that_share_are_ordered_exactly_and_no_more(int count, OrderMethod method)
    {
        OrderProblem problem = new(
            [.. Enumerable.Range(0, count).Select(i => new CauseCheck($"c{i:00}", 0.05, new(5 + i), ["tray"], []))],
            [new("tray", new(20))],
            Convention.ConfirmEvery,
            CostScale.MinutesOnly);

        Assert.Equal(method, CheckOrders.Best(problem).Method);
    }

    // Probability per minute with what it shares: the tray's three (0.6 over 26) before the wheel's two (0.3 over 16), though the
    // likeliest single check with its preparation is the lone one (0.1 over 4, which is more than either).
    [Fact]
    public void A_block_goes_by_what_all_its_checks_find_for_what_they_take_together()
    {
        OrderCosts costs = new(new(
            [
                new("t1", 0.2, new(2), ["tray"], []), new("t2", 0.2, new(2), ["tray"], []), new("t3", 0.2, new(2), ["tray"], []),
                new("w1", 0.15, new(3), ["wheel"], []), new("w2", 0.15, new(3), ["wheel"], []), new("z", 0.1, new(4), [], []),
            ],
            [new("tray", new(20)), new("wheel", new(10))],
            Convention.ConfirmEvery,
            CostScale.MinutesOnly));

        Assert.Equal([5, 0, 1, 2, 3, 4], Blocks.Best(costs));
    }

    [Fact]
    public void Missing_tool_takes_its_checks_out()
    {
        ImmutableArray<CauseCheck> checks =
            [new("gauge", 0.5, new(1), [], ["pressure gauge"]), new("look", 0.5, new(2), [], [])];

        Assert.Equal(["look"], checks.Without(new HashSet<string> { "pressure gauge" }).Select(c => c.Id));
    }

    [Fact]
    public void Money_counts_when_it_is_given_a_weight()
    {
        OrderProblem problem = new(
            [new("dear", 0.5, new(5, 40), [], []), new("slow", 0.5, new(6, 0), [], [])],
            [],
            Convention.ConfirmEvery,
            CostScale.MinutesOnly);

        Assert.Equal("dear", CheckOrders.Best(problem).Checks[0]);
        CheckOrder thrifty = CheckOrders.Best(problem with { Scale = new(1, 1) });
        Assert.Equal("slow", thrifty.Checks[0]);
        Assert.Equal(new Effort(6 + 0.5 * 5, 20), thrifty.Expected);
    }

    [Fact]
    public void Many_checks_that_share_are_ordered_in_blocks_and_it_is_said()
    {
        CauseCheck[] checks =
        [
            .. Enumerable.Range(0, 30).Select(i => new CauseCheck(
                $"c{i:00}", (i % 7 + 1) / 200.0, new(i % 5 + 2), i % 3 == 0 ? ["tray"] : i % 3 == 1 ? ["wheel"] : [], [])),
        ];
        OrderProblem problem = new([.. checks], [new("tray", new(20)), new("wheel", new(9))], Convention.ConfirmEvery, CostScale.MinutesOnly);

        CheckOrder best = CheckOrders.Best(problem);

        Assert.Equal(OrderMethod.Blocks, best.Method);
        Assert.Equal(checks.Select(c => c.Id), best.Checks.Order());
        Assert.True(best.Cost <= CheckOrders.Of(problem, checks.Select(c => c.Id)).Cost);
    }

    [Fact]
    public void Incomplete_order_and_impossible_probabilities_are_refused()
    {
        Assert.Throws<ArgumentException>(() => CheckOrders.Of(Five, ["1", "2"]));
        Assert.Throws<ArgumentException>(() => CheckOrders.Of(Five, ["1", "2", "3", "4", "4"]));
        Assert.Throws<ArgumentException>(() => CheckOrders.Of(Five, ["1", "2", "3", "4", "5", "5"]));
        Assert.Throws<ArgumentException>(() => CheckOrders.Best(Problem(Convention.ConfirmEvery, ("a", -0.1, 1), ("b", 0.2, 1))));
        Assert.Throws<ArgumentException>(() => CheckOrders.Best(Problem(Convention.ConfirmEvery, ("a", 0.9, 1), ("b", 0.2, 1))));
        Assert.Empty(CheckOrders.Best(Problem(Convention.InferLast)).Checks);
    }

    static OrderProblem Problem(Convention convention, params (string Id, double P, double Minutes)[] checks) => new(
        [.. checks.Select(c => new CauseCheck(c.Id, c.P, new(c.Minutes), [], []))], [], convention, CostScale.MinutesOnly);
}
