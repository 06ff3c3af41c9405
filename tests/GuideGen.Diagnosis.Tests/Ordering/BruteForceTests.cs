using System.Collections.Concurrent;
using System.Collections.Immutable;
using CsCheck;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Testing;

namespace GuideGen.Diagnosis.Tests.Ordering;

/// <summary>Every order and every tree of 500 random problems of up to six causes, each against what is said to be best.</summary>
public sealed class BruteForceTests
{
    static readonly int Problems = Tries.Of(500);

    const double MostForBlocks = 1.003;

    static readonly string[][] SetupChoices = [[], [], ["tray"], ["wheel"], ["tray", "wheel"]];

    static readonly ImmutableArray<Setup> Setups = [new("tray", new(12)), new("wheel", new(7))];

    static readonly Gen<OrderProblem> Orders =
        from weights in Gen.Int[1, 40].Array[1, 6]
        from minutes in Gen.Int[1, 40].Array[weights.Length]
        from setups in Gen.Int[0, SetupChoices.Length - 1].Array[weights.Length]
        from share in Gen.Bool
        from convention in Gen.Enum<Convention>()
        select new OrderProblem(
            [
                .. weights.Select((w, i) => new CauseCheck(
                    $"c{i}", w / (double)weights.Sum(), new(minutes[i]), share ? [.. SetupChoices[setups[i]]] : [], [])),
            ],
            Setups,
            convention,
            CostScale.MinutesOnly);

    static readonly Gen<SplitProblem> Splits =
        from weights in Gen.Int[1, 40].Array[2, 6]
        from minutes in Gen.Int[1, 40].Array[1, 5]
        from outcomes in Gen.Int[0, 2].Array[weights.Length].Array[minutes.Length]
        from setups in Gen.Int[0, SetupChoices.Length - 1].Array[minutes.Length]
        select new SplitProblem(
            [.. weights.Select((w, i) => new WeightedCause($"c{i}", w))],
            [
                .. minutes.Select((m, t) => new SplitCheck(
                    $"t{t}", new(m), [.. outcomes[t].Select(o => $"o{o}")], [.. SetupChoices[setups[t]]], [])),
            ],
            Setups,
            CostScale.MinutesOnly);

    [Fact]
    public void Best_order_is_the_cheapest_of_all_orders() => Orders.Sample(
        problem =>
        {
            double cheapest = Permutations([.. problem.Checks]).Min(order => ByDefinition(problem, order));
            CheckOrder best = CheckOrders.Best(problem);

            Assert.Equal(cheapest, best.Cost, 1e-9);
            Assert.Equal(cheapest, ByDefinition(problem, [.. best.Checks.Select(id => problem.Checks.Single(c => c.Id == id))]), 1e-9);
        },
        iter: Problems);

    // Blocks are a rule of thumb for problems too large to be solved exactly, without a bound for a single one (a rare one
    // of these small ones comes out two per cent dearer); on average the price of the short way is small.
    [Fact]
    public void Blocks_are_never_cheaper_than_the_cheapest_order_and_on_average_within_one_per_cent()
    {
        var costs = new ConcurrentBag<(double Blocks, double Cheapest)>();
        Orders.Sample(
            problem =>
            {
                OrderCosts ways = new(problem);
                costs.Add((ways.Expected(Blocks.Best(ways)), CheckOrders.Best(problem).Cost));
            },
            iter: Problems);

        Assert.All(costs, c => Assert.True(c.Blocks >= c.Cheapest - 1e-9, $"{c}"));
        Assert.InRange(costs.Sum(c => c.Blocks) / costs.Sum(c => c.Cheapest), 1 - 1e-9, 1.01);
    }

    // Many preparations that checks share two by two, where single moves alone come out about half a per cent dearer.
    [Fact]
    public void Blocks_find_what_moving_single_checks_does_not()
    {
        const int Checks = 11;
        Setup[] setups = [new("a", new(20)), new("b", new(30)), new("c", new(45)), new("d", new(10))];
        string[][] choices = [["a", "b"], ["b", "c"], ["c", "d"], ["a"], []];
        (double blocks, double cheapest) = (0, 0);
        // The numbers are only to be the same every time.
#pragma warning disable CA5394
        Random random = new(1);
        for (int i = 0; i < 60; i++)
        {
            int[] weights = [.. Enumerable.Range(0, Checks).Select(_ => random.Next(1, 40))];
            OrderProblem problem = new(
                [.. weights.Select((w, c) => new CauseCheck($"c{c:00}", w / (double)weights.Sum(), new(random.Next(1, 10)), [.. choices[random.Next(choices.Length)]], []))],
                [.. setups],
                i % 2 == 0 ? Convention.ConfirmEvery : Convention.InferLast,
                CostScale.MinutesOnly);
            OrderCosts ways = new(problem);
            blocks += ways.Expected(Blocks.Best(ways));
            cheapest += CheckOrders.Best(problem).Cost;
        }
#pragma warning restore CA5394

        Assert.InRange(blocks / cheapest, 1 - 1e-9, MostForBlocks);
    }

    // By definition: the first check whose own cost and greedy plans for all its outcomes are cheapest together.
    [Fact]
    public void Looking_ahead_takes_the_check_that_greedy_finishes_cheapest() => Splits.Sample(
        problem =>
        {
            int[] all = [.. Enumerable.Range(0, problem.Causes.Length)];
            int chosen = new LookAheadSplit(new SplitTable(problem), candidates: 8).Choose(all, 0);
            var costs = problem.Checks.Select(check => GreedyFrom(problem, check)).ToList();

            if (costs.Min() is { } least)
                Assert.Equal(least, costs[chosen]!.Value, 1e-9);
            else
                Assert.Equal(-1, chosen);
        },
        iter: Problems);

    [Fact]
    public void One_candidate_is_the_greedy_choice() => Splits.Sample(
        problem =>
        {
            SplitTable table = new(problem);
            int[] all = [.. Enumerable.Range(0, problem.Causes.Length)];

            Assert.Equal(new GreedySplit(table).Choose(all, 0), new LookAheadSplit(table, candidates: 1).Choose(all, 0));
        },
        iter: Problems);

    // By definition: at each step of the greedy plan, as deep as it lies, every check is held against every cause left.
    [Fact]
    public void Work_of_a_candidate_is_counted_step_by_step() => Splits.Sample(
        problem =>
        {
            SplitTable table = new(problem);
            long Work(PlanNode node, int depth) => node is PlanStep step
                ? ((long)depth * table.Checks * Causes(node).Count()) + step.Next.Sum(n => Work(n.Node, depth + 1))
                : 0;

            Assert.Equal(
                Work(SplitPlans.By(problem, SplitMethod.Greedy).Root, 1),
                new GreedySplit(table).Work([.. Enumerable.Range(0, table.Causes)], 0));
        },
        iter: Problems);

    [Fact]
    public void Best_plan_is_the_cheapest_of_all_trees() => Splits.Sample(
        problem =>
        {
            double sum = problem.Causes.Sum(c => c.Probability);
            int[] all = [.. Enumerable.Range(0, problem.Causes.Length)];
            SplitPlan best = SplitPlans.Best(problem);

            Assert.Equal(Cheapest(problem, all, []) / sum, best.Cost, 1e-9);
            Assert.Equal(best.Cost, Walk(problem, best.Root, all, []) / sum, 1e-9);
            Assert.True(SplitPlans.By(problem, SplitMethod.Greedy).Cost >= best.Cost - 1e-9);
            Assert.True(SplitPlans.By(problem, SplitMethod.LookAhead).Cost >= best.Cost - 1e-9);
        },
        iter: Problems);

    [Fact]
    public void Cheaper_first_step_than_the_best_plan_does_not_exist() => Splits.Sample(
        problem =>
        {
            var steps = SplitPlans.FirstSteps(problem);
            if (steps.Length > 0)
                Assert.Equal(SplitPlans.Best(problem).Cost, steps[0].Cost, 1e-9);
        },
        iter: Problems);

    [Fact]
    public void Useless_check_changes_nothing() => Splits.Sample(problem =>
    {
        SplitCheck useless = new("a-useless", new(0), [.. problem.Causes.Select(_ => "same")], [], []);
        SplitPlan with = SplitPlans.Best(problem with { Checks = [.. problem.Checks, useless] });
        SplitPlan without = SplitPlans.Best(problem);

        Assert.Equal(without.Cost, with.Cost, 1e-12);
        Assert.DoesNotContain("a-useless", Checks(with.Root));
    });

    [Fact]
    public void Another_check_or_a_cheaper_one_never_costs_more() => Splits.Sample(problem =>
    {
        SplitProblem fewer = problem with { Checks = problem.Checks[1..] };
        SplitProblem cheaper = problem with { Checks = problem.Checks.SetItem(0, problem.Checks[0] with { Effort = new(0.5) }) };
        SplitPlan best = SplitPlans.Best(problem), poorer = SplitPlans.Best(fewer);

        // Causes that are not told apart cost nothing, so only plans that tell as much apart can be compared.
        if (Leaves(poorer.Root) == Leaves(best.Root))
            Assert.True(best.Cost <= poorer.Cost + 1e-9);
        Assert.True(SplitPlans.Best(cheaper).Cost <= best.Cost + 1e-9);
    });

    // A plan made for the true probabilities, against one made for wrong ones, both paid under the true ones.
    [Fact]
    public void Better_prior_never_costs_more() =>
        Gen.Select(Splits, Gen.Int[1, 40].Array[6]).Sample((problem, wrong) =>
        {
            SplitProblem mistaken = problem with
            {
                Causes = [.. problem.Causes.Select((c, i) => c with { Probability = wrong[i] })],
            };
            double sum = problem.Causes.Sum(c => c.Probability);
            int[] all = [.. Enumerable.Range(0, problem.Causes.Length)];

            Assert.True(SplitPlans.Best(problem).Cost <= Walk(problem, SplitPlans.Best(mistaken).Root, all, []) / sum + 1e-9);
        });

    [Fact]
    public void Order_in_which_causes_and_checks_are_given_is_nothing() => Splits.Sample(problem =>
    {
        SplitProblem turned = problem with
        {
            Causes = [.. problem.Causes.Reverse()],
            Checks = [.. problem.Checks.Reverse().Select(c => c with { Outcomes = [.. c.Outcomes.Reverse()] })],
        };

        Assert.Equal(Print(SplitPlans.Best(problem).Root), Print(SplitPlans.Best(turned).Root));
    });

    /// <summary>The definition: each check costs its minutes and new preparations when none before it found the cause.</summary>
    static double ByDefinition(OrderProblem problem, CauseCheck[] order)
    {
        double cost = 0;
        for (int found = 0; found < order.Length; found++)
        {
            int last = problem.Convention == Convention.InferLast ? Math.Min(found, order.Length - 2) : found;
            HashSet<string> done = [];
            double path = 0;
            for (int i = 0; i <= last; i++)
                path += order[i].Effort.Minutes + New(order[i].Setups, done);
            cost += order[found].Probability * path;
        }

        return cost;
    }

    /// <summary>Every tree, without a memory; weights are not scaled.</summary>
    static double Cheapest(SplitProblem problem, int[] causes, HashSet<string> done)
    {
        double best = double.PositiveInfinity;
        foreach (SplitCheck check in problem.Checks)
        {
            int[][] parts = [.. causes.GroupBy(c => check.Outcomes[c]).Select(g => g.ToArray())];
            if (parts.Length < 2)
                continue;
            HashSet<string> after = [.. done];
            double cost = causes.Sum(c => problem.Causes[c].Probability) * (check.Effort.Minutes + New(check.Setups, after));
            best = Math.Min(best, cost + parts.Sum(part => Cheapest(problem, part, after)));
        }

        return double.IsPositiveInfinity(best) ? 0 : best;
    }

    static double Walk(SplitProblem problem, PlanNode node, int[] causes, HashSet<string> done)
    {
        if (node is not PlanStep step)
            return 0;
        SplitCheck check = problem.Checks.Single(c => c.Id == step.Check);
        HashSet<string> after = [.. done];
        double cost = causes.Sum(c => problem.Causes[c].Probability) * (check.Effort.Minutes + New(check.Setups, after));
        return cost + step.Next.Sum(n =>
            Walk(problem, n.Node, [.. causes.Where(c => check.Outcomes[c] == n.Outcome)], after));
    }

    /// <summary>Null for a check that tells nothing apart. What this check has prepared costs the others nothing.</summary>
    static double? GreedyFrom(SplitProblem problem, SplitCheck check)
    {
        int[][] parts = [.. Enumerable.Range(0, problem.Causes.Length).GroupBy(c => check.Outcomes[c]).Select(g => g.ToArray())];
        if (parts.Length < 2)
            return null;
        double sum = problem.Causes.Sum(c => c.Probability);
        ImmutableArray<Setup> after = [.. problem.Setups.Select(s => check.Setups.Contains(s.Id) ? s with { Effort = Effort.None } : s)];
        return check.Effort.Minutes + New(check.Setups, []) + parts.Sum(part =>
            part.Sum(c => problem.Causes[c].Probability) / sum * SplitPlans.By(
                new(
                    [.. part.Select(c => problem.Causes[c])],
                    [.. problem.Checks.Select(other => other with { Outcomes = [.. part.Select(c => other.Outcomes[c])] })],
                    after,
                    CostScale.MinutesOnly),
                SplitMethod.Greedy).Cost);
    }

    static IEnumerable<string> Causes(PlanNode node) =>
        node is PlanStep step ? step.Next.SelectMany(n => Causes(n.Node)) : ((PlanLeaf)node).Causes;

    static double New(IEnumerable<string> setups, HashSet<string> done) =>
        setups.Where(done.Add).Sum(id => Setups.Single(s => s.Id == id).Effort.Minutes);

    internal static IEnumerable<T[]> Permutations<T>(T[] all) => all.Length < 2
        ? [all]
        : Enumerable.Range(0, all.Length)
            .SelectMany(i => Permutations((T[])[.. all[..i], .. all[(i + 1)..]]).Select(rest => (T[])[all[i], .. rest]));

    static IEnumerable<string> Checks(PlanNode node) =>
        node is PlanStep step ? step.Next.SelectMany(n => Checks(n.Node)).Prepend(step.Check) : [];

    static int Leaves(PlanNode node) => node is PlanStep step ? step.Next.Sum(n => Leaves(n.Node)) : 1;

    static string Print(PlanNode node) => node is PlanStep step
        ? $"{step.Check}({string.Join(' ', step.Next.Select(n => $"{n.Outcome}:{Print(n.Node)}"))})"
        : string.Join('+', ((PlanLeaf)node).Causes);
}
