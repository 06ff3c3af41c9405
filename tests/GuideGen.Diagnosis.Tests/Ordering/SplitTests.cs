using GuideGen.Diagnosis.Numerics;
using GuideGen.Diagnosis.Ordering;

namespace GuideGen.Diagnosis.Tests.Ordering;

public sealed class SplitTests
{
    static readonly (string Id, double P, string Row)[] SixStates =
    [
        ("s0", 0.70, "00000"), ("s1", 0.01, "01001"), ("s2", 0.02, "00110"),
        ("s3", 0.10, "10011"), ("s4", 0.05, "11000"), ("s5", 0.12, "11110"),
    ];

    static readonly (string Id, double P, string Row)[] Staircase =
    [
        ("d1", 0.2, "0000"), ("d2", 0.2, "0001"), ("d3", 0.2, "0011"), ("d4", 0.2, "0111"), ("d5", 0.2, "1111"),
    ];

    // Source: the six-state example of K. R. Pattipati, M. G. Alexandridis 1990, IEEE Trans. SMC 20:872-887 (matrix and
    // optimum from memory); greedy, costs in the last row and first-step figures recomputed in another program.
    [Theory]
    [InlineData(SplitMethod.Exact, new double[] { 1, 1, 1, 1, 1 }, 2.18)]
    [InlineData(SplitMethod.Greedy, new double[] { 1, 1, 1, 1, 1 }, 2.86)]
    [InlineData(SplitMethod.Exact, new double[] { 1, 2, 3, 1, 4 }, 3.18)]
    [InlineData(SplitMethod.Greedy, new double[] { 1, 2, 3, 1, 4 }, 3.86)]
    public void Published_six_states_cost_what_is_published(SplitMethod method, double[] costs, double expected)
    {
        SplitPlan plan = SplitPlans.By(Problem(SixStates, costs), method);

        Assert.Equal(expected, plan.Cost, 1e-9);
        Assert.Equal(method, plan.Method);
    }

    [Fact]
    public void Published_optimal_tree_is_found()
    {
        SplitPlan plan = SplitPlans.Best(Problem(SixStates, [1, 1, 1, 1, 1]));

        Assert.Equal("t2(0:t4(0:s0 1:t1(0:s2 1:s3)) 1:t3(0:t1(0:s1 1:s4) 1:s5))", Print(plan.Root));
        Assert.Equal(new Effort(3), plan.Worst);
        Assert.Empty(plan.Inseparable);
    }

    // Source: recomputed in another program: bits that each test gives at the start, and the doubt before it.
    [Fact]
    public void Published_six_states_have_the_computed_information()
    {
        double Bits(int test) => Information.Entropy(
            [SixStates.Where(s => s.Row[test] == '0').Sum(s => s.P), SixStates.Where(s => s.Row[test] == '1').Sum(s => s.P)]);

        Assert.Equal(1.454873, Information.Entropy([.. SixStates.Select(s => s.P)]), 5e-7);
        Assert.Equal(
            [0.841465, 0.680077, 0.584239, 0.795040, 0.499916],
            [Bits(0), Bits(1), Bits(2), Bits(3), Bits(4)],
            (a, b) => Math.Abs(a - b) < 6e-7);
    }

    [Fact]
    public void Doubt_does_not_depend_on_the_scale_of_its_parts()
    {
        Assert.Equal(1, Information.Entropy([2, 2]), 1e-12);
        Assert.Equal(0.811278, Information.Entropy([30, 10]), 5e-7);
    }

    [Fact]
    public void Looking_ahead_is_no_worse_than_greedy_on_the_published_example() => Assert.InRange(
        SplitPlans.By(Problem(SixStates, [1, 1, 1, 1, 1]), SplitMethod.LookAhead).Cost, 2.18 - 1e-9, 2.86);

    // Source: A. Balakrishnan, T. Semmelbauer 1999, Decision Support Systems, Table 1; costs recomputed in another program.
    [Theory]
    [InlineData(new double[] { 0.2, 0.2, 0.2, 0.2, 0.2 }, 2.4)]
    [InlineData(new double[] { 0.1, 0.1, 0.6, 0.1, 0.1 }, 2.2)]
    public void Published_staircase_costs_what_is_published(double[] priors, double expected)
    {
        var rows = Staircase.Select((s, i) => s with { P = priors[i] }).ToArray();

        Assert.Equal(expected, SplitPlans.Best(Problem(rows, [1, 1, 1, 1])).Cost, 1e-9);
    }

    // Source: as above: candidates left, tests 1, 2, 3 in turn, when the third defect is there.
    [Fact]
    public void Published_trace_of_candidates_is_met()
    {
        SplitTable table = new(Problem(Staircase, [1, 1, 1, 1]));
        int[] left = [0, 1, 2, 3, 4];
        List<int> sizes = [];
        for (int check = 0; check < 3; check++)
        {
            left = table.Split(check, left).Single(part => part.Contains(2));
            sizes.Add(left.Length);
        }

        Assert.Equal([4, 3, 1], sizes);
        Assert.Equal([3, 1], [table.Split(1, [0, 1, 2, 3, 4])[0].Length, table.Split(2, table.Split(1, [0, 1, 2, 3, 4])[0])[1].Length]);
    }

    // Source: the same special case there: one test for each defect, equal costs, in falling probability; and the rule
    // for the last cause inferred, 32.7.
    [Fact]
    public void One_check_for_each_cause_gives_the_order_with_the_last_inferred()
    {
        (string, double, string)[] rows =
            [("1", 0.40, "10000"), ("2", 0.25, "01000"), ("3", 0.15, "00100"), ("4", 0.12, "00010"), ("5", 0.08, "00001")];

        Assert.Equal(32.7, SplitPlans.Best(Problem(rows, [30, 10, 5, 20, 15])).Cost, 1e-9);
        Assert.StartsWith("t1(0:t2(0:t3(", Print(SplitPlans.Best(Problem(rows, [1, 1, 1, 1, 1])).Root), StringComparison.Ordinal);
    }

    [Fact]
    public void Causes_that_no_check_tells_apart_end_together()
    {
        SplitPlan plan = SplitPlans.Best(Problem([("a", 0.5, "0"), ("b", 0.3, "1"), ("c", 0.2, "1")], [7]));

        Assert.Equal("t1(0:a 1:b+c)", Print(plan.Root));
        Assert.Equal(["b", "c"], Assert.Single(plan.Inseparable));
        Assert.Equal(7, plan.Cost, 1e-12);
    }

    [Fact]
    public void Shared_preparation_counts_once_in_a_plan()
    {
        SplitProblem problem = new(
            [new("a", 0.5), new("b", 0.25), new("c", 0.25)],
            [
                new("t1", new(1), ["0", "1", "1"], ["tray"], []), new("t2", new(1), ["0", "0", "1"], ["tray"], []),
                new("t3", new(12), ["0", "0", "1"], [], []),
            ],
            [new("tray", new(10))],
            CostScale.MinutesOnly);

        SplitPlan plan = SplitPlans.Best(problem);

        Assert.Equal("t1(0:a 1:t2(0:b 1:c))", Print(plan.Root));
        Assert.Equal(11.5, plan.Cost, 1e-12);
        Assert.Equal(new Effort(12), plan.Worst);
    }

    [Fact]
    public void First_steps_show_what_each_start_costs()
    {
        var steps = SplitPlans.FirstSteps(Problem(SixStates, [1, 1, 1, 1, 1]));

        Assert.Equal(("t2", 2.18), (steps[0].Check, Math.Round(steps[0].Cost, 9)));
        Assert.Equal(steps.Select(s => s.Cost).Order(), steps.Select(s => s.Cost));
        Assert.Equal(5, steps.Length);
    }

    [Fact]
    public void Beyond_sixteen_causes_the_plan_says_that_it_is_not_proved_best()
    {
        (string, double, string)[] rows =
        [
            .. Enumerable.Range(0, 40).Select(i => ($"c{i:00}", 1 + i % 5.0, Convert.ToString(i, 2).PadLeft(6, '0'))),
        ];
        SplitPlan plan = SplitPlans.Best(Problem(rows, [1, 2, 1, 2, 1, 2]));

        Assert.Equal(SplitMethod.LookAhead, plan.Method);
        Assert.Empty(plan.Inseparable);
        Assert.Throws<ArgumentException>(() => SplitPlans.By(Problem(rows, [1, 2, 1, 2, 1, 2]), SplitMethod.Exact));
    }

    // What there is no time for is not tried: a thousand causes and six hundred checks.
    [Fact]
    public void Beyond_what_there_is_time_for_the_plan_is_greedy()
    {
        (string, double, string)[] rows =
        [
            .. Enumerable.Range(0, 1000).Select(i => ($"c{i:0000}", 1.0, string.Concat(Enumerable.Range(0, 600).Select(t => (i * (t + 7) >> (t % 10)) & 1)))),
        ];
        SplitTable table = new(Problem(rows, [.. Enumerable.Repeat(1.0, 600)]));

        Assert.Equal(1, LookAheadSplit.CandidatesFor(table));
        Assert.Equal(SplitMethod.Greedy, SplitPlans.Best(Problem(rows, [.. Enumerable.Repeat(1.0, 600)])).Method);
        Assert.Equal(8, LookAheadSplit.CandidatesFor(new SplitTable(Problem(SixStates, [1, 1, 1, 1, 1]))));
    }

    [Theory]
    [InlineData(16, 6, true)]
    [InlineData(17, 0, false)]
    [InlineData(16, 7, false)]
    [InlineData(15, 7, true)]
    public void Sixteen_causes_and_twenty_two_bits_are_solved_exactly_and_no_more(int causes, int setups, bool fits)
    {
        Setup[] all = [.. Enumerable.Range(0, setups).Select(i => new Setup($"s{i}", new(1)))];
        SplitProblem problem = new(
            [.. Enumerable.Range(0, causes).Select(i => new WeightedCause($"c{i:00}", 1))],
            [new("t", new(1), [.. Enumerable.Range(0, causes).Select(i => i == 0 ? "0" : "1")], [.. all.Select(s => s.Id)], [])],
            [.. all],
            CostScale.MinutesOnly);

        Assert.Equal(fits, ExactSplit.Fits(new SplitTable(problem)));
    }

    [Theory]
    [InlineData(SplitMethod.Exact)]
    [InlineData(SplitMethod.Greedy)]
    [InlineData(SplitMethod.LookAhead)]
    public void Of_equal_checks_the_first_by_id_is_taken(SplitMethod method)
    {
        SplitProblem problem = new(
            [new("a", 0.5), new("b", 0.5)],
            [new("t2", new(3), ["0", "1"], [], []), new("t1", new(3), ["0", "1"], [], []), new("t3", new(3), ["0", "1"], [], [])],
            [],
            CostScale.MinutesOnly);

        Assert.Equal("t1(0:a 1:b)", Print(SplitPlans.By(problem, method).Root));
    }

    [Fact]
    public void Groups_that_no_check_tells_apart_are_listed_by_id()
    {
        SplitPlan plan = SplitPlans.Best(Problem([("d", 0.2, "0"), ("a", 0.3, "1"), ("c", 0.2, "0"), ("b", 0.3, "1")], [7]));

        Assert.Equal(["a b", "c d"], plan.Inseparable.Select(g => string.Join(' ', g)));
    }

    [Fact]
    public void Worst_is_the_most_minutes_and_the_most_money_of_any_path()
    {
        SplitProblem problem = new(
            [new("a", 0.5), new("b", 0.25), new("c", 0.25)],
            [new("t1", new(1, 30), ["0", "1", "1"], [], []), new("t2", new(5, 2), ["0", "0", "1"], [], [])],
            [],
            CostScale.MinutesOnly);

        Assert.Equal(new Effort(6, 32), SplitPlans.Best(problem).Worst);
    }

    [Fact]
    public void A_cause_with_the_probability_0_takes_part() =>
        Assert.Equal("t1(0:a 1:b)", Print(SplitPlans.Best(Problem([("a", 1, "0"), ("b", 0, "1")], [1])).Root));

    [Fact]
    public void More_preparations_than_a_ledger_holds_are_refused()
    {
        Setup[] setups = [.. Enumerable.Range(0, 61).Select(i => new Setup($"s{i}", new(1)))];

        Assert.Equal(60, new SetupLedger(setups[..60], setups.Select(s => s.Id)).Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => new SetupLedger(setups, setups.Select(s => s.Id)));
    }

    [Fact]
    public void Problems_that_do_not_fit_are_refused()
    {
        Assert.Throws<ArgumentException>(() => SplitPlans.Best(Problem([("a", 0, "0")], [1])));
        Assert.Throws<ArgumentException>(() => SplitPlans.Best(Problem([("a", 2, "0"), ("b", -1, "1")], [1])));
        SplitProblem short_ = new([new("a", 1)], [new("t", new(1), [], [], [])], [], CostScale.MinutesOnly);
        Assert.Throws<ArgumentException>(() => SplitPlans.Best(short_));
    }

    static SplitProblem Problem((string Id, double P, string Row)[] causes, double[] costs) => new(
        [.. causes.Select(c => new WeightedCause(c.Id, c.P))],
        [
            .. costs.Select((cost, t) => new SplitCheck(
                $"t{t + 1}", new(cost), [.. causes.Select(c => c.Row[t].ToString())], [], [])),
        ],
        [],
        CostScale.MinutesOnly);

    static string Print(PlanNode node) => node switch
    {
        PlanStep step => $"{step.Check}({string.Join(' ', step.Next.Select(n => $"{n.Outcome}:{Print(n.Node)}"))})",
        PlanLeaf leaf => string.Join('+', leaf.Causes),
        _ => throw new ArgumentOutOfRangeException(nameof(node)),
    };
}
