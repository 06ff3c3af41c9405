using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>The numbers of an order problem by index of the check.</summary>
internal sealed class OrderCosts
{
    /// <summary>Costs nearer than this are equal, so that rounding never decides an order.</summary>
    public const double Equal = 1e-10;

    readonly OrderProblem problem;
    readonly SetupLedger ledger;
    readonly ImmutableArray<long> needs;

    public OrderCosts(OrderProblem problem)
    {
        if (problem.Checks.Any(c => c.Probability < 0) || problem.Checks.Sum(c => c.Probability) > 1 + 1e-9)
            throw new ArgumentException("Probabilities are 0 or more and sum to at most 1.", nameof(problem));
        this.problem = problem;
        ledger = new(problem.Setups, problem.Checks.SelectMany(c => c.Setups));
        needs = [.. problem.Checks.Select(c => ledger.MaskOf(c.Setups))];
    }

    public IEnumerable<int> All => Enumerable.Range(0, problem.Checks.Length);

    public int Count => problem.Checks.Length;

    public bool AnySetup => ledger.Count > 0;

    public bool InfersLast => problem.Convention == Convention.InferLast;

    public double Probability(int check) => problem.Checks[check].Probability;

    public long Needs(int check) => needs[check];

    public double Own(int check) => problem.Scale.Of(problem.Checks[check].Effort);

    /// <summary>Cost of a check with those preparations that are not among <paramref name="done"/>.</summary>
    public double Full(int check, long done) => problem.Scale.Of(FullEffort(check, done));

    /// <summary>Sum over the checks of cost times the probability that it comes to this check.</summary>
    public double Expected(ReadOnlySpan<int> order) => problem.Scale.Of(Walk(order).Expected);

    public CheckOrder Report(int[] order, OrderMethod method)
    {
        (Effort expected, Effort worst) = Walk(order);
        return new([.. order.Select(i => problem.Checks[i].Id)], problem.Scale.Of(expected), expected, worst, method);
    }

    (Effort Expected, Effort Worst) Walk(ReadOnlySpan<int> order)
    {
        Effort expected = Effort.None, worst = Effort.None;
        double left = 1;
        long done = 0;
        foreach (int check in InfersLast && order.Length > 0 ? order[..^1] : order)
        {
            Effort effort = FullEffort(check, done);
            expected += left * effort;
            worst += effort;
            done |= needs[check];
            left = Math.Max(0, left - Probability(check));
        }

        return (expected, worst);
    }

    Effort FullEffort(int check, long done) => problem.Checks[check].Effort + ledger.Missing(needs[check], done);
}
