using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Tests;

public sealed class StatedOutcomeTests
{
    static readonly Dictionary<string, int> Causes = new() { ["hose"] = 0, ["cooler"] = 1, ["egr"] = 2 };

    // Common practice, no source: 18 parts where pointed to, 1 where ruled out; 9 to 1 for a cause it was not made for.
    [Fact]
    public void What_an_outcome_points_to_and_rules_out_becomes_likelihoods()
    {
        ImmutableArray<Outcome> outcomes = StatedOutcomes.Likelihoods(
            [Outcome("leak", ["hose", "cooler"], []), Outcome("holds", [], ["hose"])], Causes);

        Assert.Equal([18.0 / 19, 18.0 / 20, 0.1], outcomes[0].Likelihoods, (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal([1.0 / 19, 2.0 / 20, 0.9], outcomes[1].Likelihoods, (a, b) => Math.Abs(a - b) < 1e-12);
    }

    [Fact]
    public void Stated_chance_wins_and_the_rest_goes_to_the_others()
    {
        ImmutableArray<Outcome> outcomes = StatedOutcomes.Likelihoods(
            [Outcome("leak", ["hose"], [], ("hose", 0.6)), Outcome("holds", [], ["hose"])], Causes);

        Assert.Equal(0.6, outcomes[0].Likelihoods[0], 1e-12);
        Assert.Equal(0.4, outcomes[1].Likelihoods[0], 1e-12);
    }

    // 0.4 is left over 9 parts of the one that states nothing: 0.4.
    [Fact]
    public void What_several_stated_chances_leave_goes_to_the_others()
    {
        ImmutableArray<Outcome> outcomes = StatedOutcomes.Likelihoods(
            [Outcome("leak", [], [], ("hose", 0.3)), Outcome("seeps", [], [], ("hose", 0.3)), Outcome("holds", [], []), Outcome("odd", [], ["hose"])], Causes);

        Assert.Equal([0.3, 0.3, 0.36, 0.04], outcomes.Select(o => o.Likelihoods[0]), (a, b) => Math.Abs(a - b) < 1e-12);
    }

    [Fact]
    public void Cause_that_is_only_ruled_out_is_told_from_the_others()
    {
        ImmutableArray<Outcome> outcomes = StatedOutcomes.Likelihoods([Outcome("leak", [], []), Outcome("holds", [], ["egr"])], Causes);

        Assert.Equal([0.5, 0.5, 0.9], outcomes[0].Likelihoods, (a, b) => Math.Abs(a - b) < 1e-12);
    }

    [Fact]
    public void Cause_of_which_every_outcome_is_said_to_be_impossible_shows_each_alike()
    {
        ImmutableArray<Outcome> outcomes = StatedOutcomes.Likelihoods(
            [Outcome("leak", [], [], ("hose", 0)), Outcome("holds", [], [], ("hose", 0))], Causes);

        Assert.Equal([0.5, 0.5], outcomes.Select(o => o.Likelihoods[0]));
    }

    [Fact]
    public void Stated_chances_that_do_not_sum_to_1_are_scaled()
    {
        ImmutableArray<Outcome> outcomes = StatedOutcomes.Likelihoods(
            [Outcome("leak", [], [], ("hose", 0.9)), Outcome("holds", [], [], ("hose", 0.3))], Causes);

        Assert.Equal(0.75, outcomes[0].Likelihoods[0], 1e-12);
    }

    [Fact]
    public void Check_can_be_taken_as_sure()
    {
        UncertainCheck check = new("c", new(5), StatedOutcomes.Likelihoods(
            [Outcome("leak", ["hose", "cooler"], []), Outcome("holds", [], ["hose"])], Causes), [], []);

        Assert.Equal(["leak", "leak", "holds"], check.LikeliestOutcomes());
    }

    static StatedOutcome Outcome(
        string id, string[] pointsTo, string[] rulesOut, params (string Cause, double Chance)[] chances) =>
        new(id, [.. pointsTo], [.. rulesOut], chances.ToImmutableDictionary(c => c.Cause, c => c.Chance));
}
