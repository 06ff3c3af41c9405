using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

public sealed class NextCheckTests
{
    static readonly RankingModel Model = RankingModel.Create(
        [new("a", 1), new("b", 1)],
        0,
        new()
        {
            Setups = [new("undertray-off", new(15))],
            Checks =
            [
                // Clear as it can be, but the undertray must come off.
                new("below", new(5), [new("bad", [1, 0, 0.5]), new("good", [0, 1, 0.5])], ["undertray-off"], []),
                new("above", new(10), [new("bad", [1, 0, 0.5]), new("good", [0, 1, 0.5])], [], ["gauge"]),
                new("idle", new(1), [new("bad", [0.5, 0.5, 0.5]), new("good", [0.5, 0.5, 0.5])], [], []),
            ],
        });

    [Fact]
    public void Most_doubt_per_minute_comes_first_with_preparations_counted()
    {
        var next = Next([], []);

        Assert.Equal(["above", "below", "idle"], next.Select(n => n.Check));
        Assert.Equal([10, 20, 1], next.Select(n => n.Minutes));
        // Two causes, even, told apart but for the bound of 0.005: 1 bit less the doubt that is left.
        Assert.Equal(0.9546, next[0].Bits, 5e-4);
        Assert.Equal(0, next[2].Bits, 1e-12);
    }

    [Fact]
    public void Equal_checks_and_equal_causes_go_by_id()
    {
        RankingModel model = RankingModel.Create(
            [new("b", 1), new("a", 1), new("c", 1)],
            0,
            new() { Checks = [Even("second"), Even("first")] });

        var next = NextChecks.Of(model, Answers.Nothing, new HashSet<string>(), new HashSet<string>());

        Assert.Equal(["first", "second"], next.Select(n => n.Check));
        Assert.Equal(["a", "b", "c"], next[0].Outcomes[0].After.Take(3).Select(c => c.Id));

        static UncertainCheck Even(string id) => new(id, new(5), [new("bad", [0.9, 0.9, 0.9, 0.1]), new("good", [0.1, 0.1, 0.1, 0.9])], [], []);
    }

    [Fact]
    public void Check_said_to_take_no_time_is_not_worth_any_number_of_others()
    {
        RankingModel model = Model with { Checks = [Model.Checks[1] with { Effort = new(0) }] };
        NextCheck next = NextChecks.Of(model, Answers.Nothing, new HashSet<string>(), new HashSet<string>())[0];

        Assert.Equal(next.Bits / 0.1, next.BitsPerMinute, 1e-12);
    }

    [Fact]
    public void Preparation_already_made_costs_nothing() =>
        Assert.Equal(["below", "above", "idle"], Next([], ["undertray-off"]).Select(n => n.Check));

    [Fact]
    public void Check_for_which_the_tool_is_missing_is_left_out() =>
        Assert.Equal(["below", "idle"], Next(["gauge"], []).Select(n => n.Check));

    [Fact]
    public void Check_already_done_is_not_proposed_again() => Assert.Equal(
        ["below", "idle"],
        NextChecks.Of(Model, Answers.Nothing.WithOutcome("above", "bad"), new HashSet<string>(), new HashSet<string>())
            .Select(n => n.Check));

    [Fact]
    public void Each_outcome_shows_the_list_after_it()
    {
        NextCheck above = Next([], [])[0];

        Assert.Equal(["bad", "good"], above.Outcomes.Select(o => o.Id));
        Assert.Equal(0.5, above.Outcomes[0].Probability, 1e-12);
        Assert.Equal("a", above.Outcomes[0].After[0].Id);
        Assert.Equal("b", above.Outcomes[1].After[0].Id);
    }

    static NextCheck[] Next(string[] missingTools, string[] setupsDone) =>
        [.. NextChecks.Of(Model, Answers.Nothing, missingTools.ToHashSet(), setupsDone.ToHashSet())];
}
