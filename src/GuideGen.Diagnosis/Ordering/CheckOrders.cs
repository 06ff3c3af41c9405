namespace GuideGen.Diagnosis.Ordering;

/// <summary>The cheapest order of checks, one for each cause, and the cost of any other.</summary>
public static class CheckOrders
{
    /// <summary>Problems with shared preparations are solved exactly up to so many checks.</summary>
    public const int ExactUpTo = 16;

    /// <summary>
    /// Without shared preparations by the exchange rule (W. E. Smith 1956, NRLQ 3:59-66; for the search of faults
    /// H. Simon, J. Kadane 1975, AI 6:235-247). Equal choices go by id, so the result does not depend on the order given.
    /// </summary>
    public static CheckOrder Best(OrderProblem problem)
    {
        OrderProblem sorted = problem with { Checks = problem.Checks.Sort((a, b) => string.CompareOrdinal(a.Id, b.Id)) };
        OrderCosts costs = new(sorted);
        if (costs.AnySetup)
            return sorted.Checks.Length <= ExactUpTo
                ? costs.Report(OverSets.Best(costs), OrderMethod.EverySet)
                : costs.Report(Blocks.Best(costs), OrderMethod.Blocks);
        return problem.Convention == Convention.ConfirmEvery
            ? costs.Report(ByRatio(costs, [.. costs.All]), OrderMethod.RatioRule)
            : costs.Report(LeaveOne(costs), OrderMethod.LeaveOneRule);
    }

    /// <summary>What a given order costs.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="order">Ids of all its checks, each once.</param>
    public static CheckOrder Of(OrderProblem problem, IEnumerable<string> order)
    {
        Dictionary<string, int> index =
            problem.Checks.Select((c, i) => (c.Id, i)).ToDictionary(c => c.Id, c => c.i, StringComparer.Ordinal);
        int[] given = [.. order.Select(id => index[id])];
        if (given.Distinct().Count() != problem.Checks.Length || given.Length != problem.Checks.Length)
            throw new ArgumentException("An order names each check once.", nameof(order));
        return new OrderCosts(problem).Report(given, OrderMethod.Given);
    }

    internal static int[] ByRatio(OrderCosts costs, int[] checks) =>
        [.. checks.OrderByDescending(i => Ratio(costs.Probability(i), costs.Own(i))).ThenBy(i => i)];

    /// <summary>Rounded, so that equal ratios stay equal whatever way they were computed.</summary>
    internal static double Ratio(double gain, double cost) =>
        cost <= 0 ? double.PositiveInfinity : Math.Round(gain / cost, 13);

    // The rule of falling ratios is not optimal when the last cause is inferred; with that cause fixed it is.
    static int[] LeaveOne(OrderCosts costs) =>
        costs.All.Reverse().Select(last => (int[])[.. ByRatio(costs, [.. costs.All.Where(i => i != last)]), last])
            .DefaultIfEmpty([])
            .Aggregate((best, next) => costs.Expected(next) < costs.Expected(best) - OrderCosts.Equal ? next : best);
}
