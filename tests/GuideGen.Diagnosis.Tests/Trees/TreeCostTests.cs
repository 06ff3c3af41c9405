using System.Collections.Immutable;
using GuideGen.Diagnosis.Trees;

namespace GuideGen.Diagnosis.Tests.Trees;

public sealed class TreeCostTests
{
    // Source: the six-state example of K. R. Pattipati and co-workers (IEEE Trans. SMC 20:872-887, 1990; matrix from
    // memory): the optimal tree has depths 2, 3, 3, 3, 3, 2 and costs 2.18 with unit costs.
    [Fact]
    public void Published_optimal_tree_costs_what_is_published()
    {
        TreeCost cost = Cost(
            Tree("t2",
                Check("t2", 1, ("pass", "t4"), ("fail", "t3")),
                Check("t4", 1, ("pass", "s0"), ("fail", "t1")),
                Check("t3", 1, ("fail", "s5"), ("pass", "t1b")),
                Check("t1", 1, ("pass", "s2"), ("fail", "s3")),
                Check("t1b", 1, ("pass", "s1"), ("fail", "s4")),
                Leaf("s0"), Leaf("s1"), Leaf("s2"), Leaf("s3"), Leaf("s4"), Leaf("s5")),
            ("s0", 0.70), ("s1", 0.01), ("s2", 0.02), ("s3", 0.10), ("s4", 0.05), ("s5", 0.12));

        Assert.Equal(2.18, cost.Expected.Minutes, 1e-12);
        Assert.Equal(3, cost.Worst.Minutes);
        Assert.Equal(3, cost.Deepest);
        Assert.Equal(1, cost.Coverage, 1e-12);
        Assert.Equal([2, 3, 3, 3, 3, 2], cost.Causes.Select(c => c.Expected.Minutes));
        Assert.Empty(cost.Problems);
    }

    // Source: A. Balakrishnan, T. Semmelbauer 1999, Decision Support Systems, Table 1, tests in their order 1, 2, 3, 4.
    [Theory]
    [InlineData(new double[] { 0.2, 0.2, 0.2, 0.2, 0.2 }, 2.8)]
    [InlineData(new double[] { 0.1, 0.1, 0.6, 0.1, 0.1 }, 2.9)]
    public void Published_staircase_in_its_given_order_costs_what_is_computed(double[] priors, double expected)
    {
        SymptomTree tree = Tree("1",
            Check("1", 1, ("fail", "d5"), ("pass", "2")), Check("2", 1, ("fail", "d4"), ("pass", "3")),
            Check("3", 1, ("fail", "d3"), ("pass", "4")), Check("4", 1, ("fail", "d2"), ("pass", "d1")),
            Leaf("d1"), Leaf("d2"), Leaf("d3"), Leaf("d4"), Leaf("d5"));

        Assert.Equal(expected, Cost(tree, [.. priors.Select((p, i) => ($"d{i + 1}", p))]).Expected.Minutes, 1e-12);
    }

    [Fact]
    public void Shared_preparation_counts_once_on_a_path()
    {
        SymptomTree tree = Tree("a",
            Check("a", 10, ["tray"], ("yes", "x"), ("no", "b")),
            Check("b", 10, ["tray"], ("yes", "y"), ("no", "z")),
            Leaf("x"), Leaf("y"), Leaf("z")) with
        { Setups = [new("tray", new(20, 3))] };

        TreeCost cost = Cost(tree, ("x", 0.5), ("y", 0.25), ("z", 0.25));

        Assert.Equal(0.5 * 30 + 0.5 * 40, cost.Expected.Minutes, 1e-12);
        Assert.Equal(3, cost.Expected.Money, 1e-12);
        Assert.Equal(new Effort(40, 3), cost.Worst);
    }

    // Two paths to 'b', only one of which has taken the undertray off.
    [Fact]
    public void Paths_that_meet_remember_what_each_has_done()
    {
        SymptomTree tree = Tree("ask",
            Ask("ask", ("low", "a"), ("high", "b")),
            Check("a", 5, ["tray"], ("done", "b")),
            Check("b", 10, ["tray"], ("done", "x")),
            Leaf("x")) with
        { Setups = [new("tray", new(20))] };

        TreeCost cost = Cost(tree, ("x", 1));

        Assert.Equal(0.5 * 35 + 0.5 * 30, cost.Expected.Minutes, 1e-12);
        Assert.True(cost.Causes[0].Assumed);
    }

    [Fact]
    public void Stated_chances_split_a_cause_over_right_wrong_and_no_answer()
    {
        SymptomTree tree = Tree("c",
            new TreeStep("c", "c", new(8, 2), [],
            [
                Branch("bad", "x", ("x", 0.7), ("y", 0.2)),
                Branch("good", "y", ("x", 0.2), ("y", 0.8)),
                Branch("unclear", "stop", ("x", 0.1), ("y", 0)),
            ]),
            Leaf("x"), Leaf("y"), new TreeLeaf("stop", null));

        TreeCost cost = Cost(tree, ("x", 3), ("y", 1));

        Assert.Equal(0.75 * 0.7 + 0.25 * 0.8, cost.Coverage, 1e-12);
        Assert.Equal(0.75 * 0.2 + 0.25 * 0.2, cost.WrongLeaf, 1e-12);
        Assert.Equal(0.075, cost.NoAnswer, 1e-12);
        Assert.Equal(new Effort(8, 2), cost.Expected);
        Assert.All(cost.Causes, c => Assert.False(c.Assumed));
    }

    [Fact]
    public void What_is_not_stated_takes_the_rest_of_what_is()
    {
        SymptomTree tree = Tree("c",
            new TreeStep("c", "c", new(8), [], [Branch("bad", "x", ("x", 0.7)), Branch("good", "y"), Branch("odd", "x2")]),
            Leaf("x"), Leaf("y"), new TreeLeaf("x2", "x"));

        CauseWalk walk = Cost(tree, ("x", 1)).Causes[0];

        Assert.Equal(1, walk.Found, 1e-12);
        Assert.False(walk.Assumed);
        CauseWalk other = Cost(tree with { Nodes = tree.Nodes.Replace(tree.Nodes[^1], Leaf("x2")) }, ("x", 1)).Causes[0];
        Assert.Equal((0.7, 0.3), (Math.Round(other.Found, 12), Math.Round(other.Wrong, 12)));
        Assert.True(other.Assumed);
    }

    // 0.5 and 0.4 are stated, so 0.1 is left; 1.2 and 0.4 are too much and are scaled; two zeros leave all of it.
    [Theory]
    [InlineData(0.5, 0.4, 0.5)]
    [InlineData(1.2, 0.4, 0.75)]
    [InlineData(0, 0, 0)]
    public void What_two_answers_state_leaves_the_rest_to_the_third(double one, double other, double found)
    {
        SymptomTree tree = Tree("c",
            new TreeStep("c", "c", new(8), [], [Branch("bad", "x", ("x", one)), Branch("good", "y", ("x", other)), Branch("odd", "stop")]),
            Leaf("x"), Leaf("y"), new TreeLeaf("stop", null));

        CauseWalk walk = Cost(tree, ("x", 1)).Causes[0];

        Assert.Equal(found, walk.Found, 1e-12);
        Assert.Equal(1 - found - walk.Wrong, walk.NoAnswer, 1e-12);
        Assert.False(walk.Assumed);
    }

    [Fact]
    public void Cause_of_which_every_answer_is_said_to_be_impossible_takes_each_alike_and_it_is_said()
    {
        SymptomTree tree = Tree("c",
            new TreeStep("c", "c", new(8), [], [Branch("bad", "x", ("x", 0)), Branch("good", "y", ("x", 0))]), Leaf("x"), Leaf("y"));

        CauseWalk walk = Cost(tree, ("x", 1)).Causes[0];

        Assert.Equal((0.5, 0.5, true), (walk.Found, walk.Wrong, walk.Assumed));
    }

    // Two steps guess about x: what was once assumed stays assumed. Nothing of y comes to the second, so nothing is assumed there.
    [Fact]
    public void What_is_assumed_at_one_step_is_assumed_whatever_the_others_do()
    {
        SymptomTree tree = Tree("a",
            new TreeStep("a", null, Effort.None, [], [Branch("1", "b", ("y", 0)), Branch("2", "b", ("y", 0)), Branch("3", "y", ("y", 1), ("x", 0))]),
            Ask("b", ("1", "x"), ("2", "x2")), Leaf("x"), new TreeLeaf("x2", "x"), Leaf("y"));

        TreeCost cost = Cost(tree, ("x", 0.5), ("y", 0.5));

        Assert.Equal([true, false], cost.Causes.Select(c => c.Assumed));
    }

    // Only a cause with the probability 0 comes to the dear check, so it is no worst case.
    [Fact]
    public void Where_nothing_possible_comes_there_is_no_worst_case()
    {
        SymptomTree tree = Tree("a",
            new TreeStep("a", null, Effort.None, [], [Branch("1", "x", ("x", 1), ("never", 0)), Branch("2", "dear", ("x", 0), ("never", 1))]),
            Check("dear", 500, ("yes", "never")), Leaf("x"), Leaf("never"));

        TreeCost cost = Cost(tree, ("x", 1), ("never", 0));

        Assert.Equal((0, 1), (cost.Worst.Minutes, cost.Deepest));
    }

    // The same two checks in either order leave the same done, so their paths go on as one; a question in between changes nothing.
    [Fact]
    public void Checks_done_are_the_same_in_whatever_order()
    {
        Done done = new(0, "");

        Assert.Equal(done.With(1, "a").With(2, "b"), done.With(2, "b").With(1, "a"));
        Assert.Equal(done.With(0, "a"), done.With(0, "a").With(0, null));
        Assert.True(done.With(0, "b").With(0, "a").HasCheck("b"));
        Assert.False(done.With(0, "ab").HasCheck("a"));
    }

    [Fact]
    public void Cause_without_a_leaf_ends_wrong_and_something_else_ends_in_advice()
    {
        SymptomTree tree = Tree("q",
            Ask("q", ("yes", "x"), ("no", "stop")), Leaf("x"), new TreeLeaf("stop", null));

        TreeCost cost = Cost(tree, ("x", 0.5), ("missing", 0.3), (WeightedCause.SomethingElse, 0.2));

        Assert.Equal(0.5, cost.Coverage, 1e-12);
        Assert.Equal(0.15, cost.WrongLeaf, 1e-12);
        Assert.Equal(0.15 + 0.2, cost.NoAnswer, 1e-12);
        Assert.Equal([false, true, false], cost.Causes.Select(c => c.Assumed));
    }

    [Fact]
    public void Check_done_again_costs_nothing_and_is_named_with_its_path()
    {
        SymptomTree tree = Tree("a",
            Check("a", 10, ("yes", "x"), ("no", "again")),
            new TreeStep("again", "a", new(10), [], [new("yes", "x"), new("no", "y")]),
            Leaf("x"), Leaf("y"));

        TreeCost cost = Cost(tree, ("x", 0.5), ("y", 0.5));

        Assert.Equal(10, cost.Expected.Minutes, 1e-12);
        TreeProblem problem = Assert.Single(cost.Problems);
        Assert.Equal((TreeFlaw.RepeatedCheck, "again"), (problem.Flaw, problem.Node));
        Assert.Equal(["a", "again"], problem.Path);
    }

    [Fact]
    public void Circle_dangling_answer_and_step_without_answers_have_no_cost()
    {
        Assert.Equal(
            [(TreeFlaw.Circular, "a b a")],
            Problems(Tree("a", Ask("a", ("1", "b"), ("2", "x")), Ask("b", ("1", "a")), Leaf("x"))));
        Assert.Equal([(TreeFlaw.Dangling, "a gone")], Problems(Tree("a", Ask("a", ("1", "gone")))));
        Assert.Equal([(TreeFlaw.NoAnswers, "a")], Problems(Tree("a", Ask("a"))));
        Assert.Equal([(TreeFlaw.Dangling, "gone")], Problems(Tree("gone")));
    }

    [Fact]
    public void Unreachable_node_is_named_and_does_not_stop_the_walk()
    {
        TreeCost cost = Cost(Tree("a", Ask("a", ("1", "x")), Leaf("x"), Leaf("island")), ("x", 1));

        Assert.Equal((TreeFlaw.Unreachable, "island"), (cost.Problems.Single().Flaw, cost.Problems.Single().Node));
    }

    // Forty questions whose two answers lead to the same next one: 2^40 paths, forty nodes.
    [Fact]
    public void Paths_that_join_again_do_not_multiply()
    {
        TreeNode[] steps =
        [
            .. Enumerable.Range(0, 40).Select(i => Check($"n{i}", 1, ("yes", $"n{i + 1}"), ("no", $"n{i + 1}"))),
            new TreeLeaf("n40", "x"),
        ];

        Assert.Equal(40, Cost(Tree("n0", steps), ("x", 1)).Expected.Minutes, 1e-9);
    }

    static TreeCost Cost(SymptomTree tree, params (string Id, double P)[] causes) =>
        TreeCost.Of(tree, [.. causes.Select(c => new WeightedCause(c.Id, c.P))], out _)!;

    static (TreeFlaw, string)[] Problems(SymptomTree tree)
    {
        Assert.Null(TreeCost.Of(tree, [new("x", 1)], out ImmutableArray<TreeProblem> problems));
        return [.. problems.Select(p => (p.Flaw, string.Join(' ', p.Path)))];
    }

    static SymptomTree Tree(string start, params TreeNode[] nodes) => new(start, [.. nodes], []);

    static TreeStep Ask(string id, params (string Answer, string Next)[] answers) =>
        new(id, null, Effort.None, [], [.. answers.Select(a => new TreeBranch(a.Answer, a.Next))]);

    static TreeStep Check(string id, double minutes, params (string Answer, string Next)[] answers) =>
        Check(id, minutes, [], answers);

    static TreeStep Check(string id, double minutes, string[] setups, params (string Answer, string Next)[] answers) =>
        new(id, id, new(minutes), [.. setups], [.. answers.Select(a => new TreeBranch(a.Answer, a.Next))]);

    static TreeBranch Branch(string answer, string next, params (string Cause, double Chance)[] chances) =>
        new(answer, next, ChanceRow.Of(chances));

    static TreeLeaf Leaf(string cause) => new(cause, cause);
}
