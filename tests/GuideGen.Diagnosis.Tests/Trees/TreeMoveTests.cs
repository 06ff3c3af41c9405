using System.Collections.Immutable;
using GuideGen.Diagnosis.Trees;

namespace GuideGen.Diagnosis.Tests.Trees;

/// <summary>The worked example of the p/c rule (methods as in <see cref="Ordering.OrderTests"/>) as a chain of checks that is walked.</summary>
public sealed class TreeMoveTests
{
    const string Onward = "onward";

    static readonly ImmutableArray<WeightedCause> Causes =
        [new("a", .40), new("b", .25), new("c", .15), new("d", .12), new("e", .08)];

    static readonly ImmutableArray<string> Neighbours = ["bacde", "acbde", "abdce", "abced"];

    static readonly Dictionary<string, double> Minutes = new() { ["a"] = 30, ["b"] = 10, ["c"] = 5, ["d"] = 20, ["e"] = 15 };

    [Fact]
    public void Moves_one_after_the_other_reach_the_best_order_of_the_published_example()
    {
        ImmutableArray<TreeMove> moves = TreeMoves.Series(Chain("abcde"), Onward, (_, _) => true, (Causes, CostScale.MinutesOnly));

        Assert.Equal(36.7, moves[^1].Cost.Expected.Minutes, 9);
    }

    [Fact]
    public void The_best_single_move_is_the_best_of_all_exchanges_of_neighbours()
    {
        double[] all = [.. Neighbours.Select(o => TreeCost.Of(Chain(o), Causes, out _)!.Expected.Minutes)];

        TreeMove? move = TreeMoves.Best(Chain("abcde"), Onward, (_, _) => true, (Causes, CostScale.MinutesOnly));

        Assert.Equal((Math.Round(all.Min(), 9), "b", "a"), (Math.Round(move!.Cost.Expected.Minutes, 9), move.Check, move.Before));
    }

    [Fact]
    public void A_move_that_is_not_allowed_is_not_made() =>
        Assert.NotEqual("b", TreeMoves.Best(Chain("abcde"), Onward, (check, _) => check != "b", (Causes, CostScale.MinutesOnly))!.Check);

    [Fact]
    public void Nothing_is_moved_in_the_best_order() =>
        Assert.Null(TreeMoves.Best(Chain("cbade"), Onward, (_, _) => true, (Causes, CostScale.MinutesOnly)));

    [Fact]
    public void A_check_that_never_goes_on_stays_where_it_is()
    {
        SymptomTree chain = Chain("ab");
        SymptomTree sure = chain with
        {
            Start = "sure",
            Nodes = [.. chain.Nodes, new TreeStep("sure", "sure", new Effort(90), [], [new("yes", "found-a"), new("no", "a")])],
        };

        Assert.Equal(("b", "a"), TreeMoves.Best(sure, Onward, (_, _) => true, (Causes, CostScale.MinutesOnly)) is { } move ? (move.Check, move.Before) : default);
    }

    [Fact]
    public void A_check_that_two_steps_lead_to_stays_where_it_is()
    {
        SymptomTree chain = Chain("ab");
        SymptomTree two = chain with
        {
            Start = "first",
            Nodes = [.. chain.Nodes, new TreeStep("first", null, new Effort(0), [], [new("yes", "a"), new(Onward, "b")])],
        };

        Assert.Null(TreeMoves.Best(two, Onward, (_, _) => true, (Causes, CostScale.MinutesOnly)));
    }

    /// <summary>Each check finds its own cause for sure, and else leads on; the last leads to advice.</summary>
    static SymptomTree Chain(string order) => new(
        order[..1],
        [
            .. order.Select((c, i) => new TreeStep(
                $"{c}",
                $"{c}",
                new Effort(Minutes[$"{c}"]),
                [],
                [Branch("found", $"found-{c}", $"{c}", 1), Branch(Onward, i + 1 < order.Length ? order.Substring(i + 1, 1) : "advice", $"{c}", 0)])),
            .. order.Select(c => new TreeLeaf($"found-{c}", $"{c}")),
            new TreeLeaf("advice", null),
        ],
        []);

    static TreeBranch Branch(string answer, string next, string cause, double chance) => new(
        answer, next, ChanceRow.Of([.. Causes.Select(c => (c.Id, c.Id == cause ? chance : 1 - chance))]));
}
