using CsCheck;
using GuideGen.Diagnosis.Money;
using GuideGen.Diagnosis.Ordering;

namespace GuideGen.Diagnosis.Tests.Ordering;

public sealed class StoppingTests
{
    // Source: threshold rule of S. Pauker, J. Kassirer 1980, NEJM 302:1109-1117: with one sure test and two causes, testing
    // pays exactly while it costs less than the loss of acting untested.
    [Fact]
    public void One_sure_test_is_done_exactly_when_the_threshold_rule_says() =>
        Gen.Select(Gen.Double[0.5, 0.999], Gen.Double[1, 100], Gen.Double[1, 300]).Sample((p, test, loss) =>
        {
            TestOrReplace rule = new(test, loss, p);
            StoppingPlan plan = StoppingPlans.Best(Problem([("part", p), ("other", 1 - p)], loss, Sure("test", test)));

            Assert.Equal(rule.TestFirst, plan.Root is StoppingStep);
            Assert.Equal(Math.Min(test, rule.LossUntested), plan.Cost, 1e-9);
        });

    // Worked by hand: 0.6 prior, sensitivity 0.9, specificity 0.95: after 'bad' 0.964286, after 'good' 0.136364.
    [Fact]
    public void Test_that_can_err_leaves_a_chance_of_a_wrong_repair()
    {
        StoppingPlan plan = StoppingPlans.Best(Problem(
            [("part", 0.6), ("other", 0.4)], 120, new UncertainCheck("test", new(25), [new("bad", [0.9, 0.05]), new("good", [0.1, 0.95])], [], [])));

        StoppingStep step = Assert.IsType<StoppingStep>(plan.Root);
        Assert.Equal(0.964286, ((StoppingEnd)step.Next[0].Node).Probability, 5e-7);
        Assert.Equal(1 - 0.136364, ((StoppingEnd)step.Next[1].Node).Probability, 5e-7);
        Assert.Equal(0.6 * 0.1 + 0.4 * 0.05, plan.ChanceWrong, 1e-12);
        Assert.Equal(25 + 120 * 0.08, plan.Cost, 1e-12);
        Assert.Equal(new Effort(25), plan.Expected);
    }

    [Fact]
    public void Small_loss_makes_fitting_the_part_untested_look_best() => Assert.IsType<StoppingEnd>(
        StoppingPlans.Best(Problem([("part", 0.6), ("other", 0.4)], 20, Sure("test", 25))).Root);

    [Fact]
    public void Preparation_is_paid_once()
    {
        UncertainCheck first = new("a", new(1), [new("0", [1, 0, 0]), new("1", [0, 1, 1])], ["tray"], []);
        UncertainCheck second = new("b", new(1), [new("0", [0, 1, 0]), new("1", [1, 0, 1])], ["tray"], []);
        StoppingProblem problem = Problem([("x", 0.5), ("y", 0.25), ("z", 0.25)], 1000, first, second) with
        {
            Setups = [new("tray", new(10))],
        };

        Assert.Equal(11.5, StoppingPlans.Best(problem).Cost, 1e-9);
    }

    [Fact]
    public void Plan_agrees_with_a_search_through_all_plans() => Problems.Sample(
        problem =>
        {
            StoppingPlan plan = StoppingPlans.Best(problem);
            double sum = problem.Causes.Sum(c => c.Probability);

            Assert.Equal(Search(problem, [.. problem.Causes.Select(c => c.Probability / sum)], 0), plan.Cost, 1e-9);
            Assert.Equal(plan.Expected.Minutes + problem.WrongRepair * plan.ChanceWrong, plan.Cost, 1e-9);
        },
        iter: 500);

    [Fact]
    public void Too_many_checks_are_cut_to_the_most_telling_and_the_others_named()
    {
        UncertainCheck[] checks =
        [
            .. Enumerable.Range(0, 20).Select(i =>
                new UncertainCheck($"c{i:00}", new(5), [new("0", [0.5 + i / 50.0, 0.5]), new("1", [0.5 - i / 50.0, 0.5])], [], [])),
        ];

        StoppingPlan plan = StoppingPlans.Best(Problem([("x", 0.5), ("y", 0.5)], 60, checks));

        Assert.Equal(9, plan.LeftOut.Length);
        Assert.Contains("c00", plan.LeftOut);
        Assert.DoesNotContain("c19", plan.LeftOut);
    }

    static readonly Gen<StoppingProblem> Problems =
        from priors in Gen.Double[0.05, 1].Array[2, 4]
        from minutes in Gen.Int[1, 30].Array[1, 3]
        from likelihoods in Gen.Double[0.05, 0.95].Array[priors.Length].Array[minutes.Length]
        from loss in Gen.Int[10, 300]
        select Problem(
            [.. priors.Select((p, i) => ($"c{i}", p))],
            loss,
            [
                .. minutes.Select((m, t) => new UncertainCheck(
                    $"t{t}", new(m),
                    [new("0", [.. likelihoods[t]]), new("1", [.. likelihoods[t].Select(l => 1 - l)])], [], [])),
            ]);

    /// <summary>Every plan, without a memory; <paramref name="done"/> has a bit for each check.</summary>
    static double Search(StoppingProblem problem, double[] weights, int done)
    {
        double best = problem.WrongRepair * (weights.Sum() - weights.Max());
        for (int check = 0; check < problem.Checks.Length; check++)
        {
            if ((done >> check & 1) == 1)
                continue;
            double cost = weights.Sum() * problem.Checks[check].Effort.Minutes;
            foreach (Outcome outcome in problem.Checks[check].Outcomes)
                cost += Search(problem, [.. weights.Select((w, c) => w * outcome.Likelihoods[c])], done | 1 << check);
            best = Math.Min(best, cost);
        }

        return best;
    }

    static UncertainCheck Sure(string id, double minutes) =>
        new(id, new(minutes), [new("bad", [1, 0]), new("good", [0, 1])], [], []);

    static StoppingProblem Problem((string Id, double P)[] causes, double loss, params UncertainCheck[] checks) =>
        new([.. causes.Select(c => new WeightedCause(c.Id, c.P))], [.. checks], [], loss, CostScale.MinutesOnly);
}
