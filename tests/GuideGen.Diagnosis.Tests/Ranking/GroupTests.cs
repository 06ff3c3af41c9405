using System.Collections.Immutable;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

/// <summary>Findings with one root signal must not count twice. Source: arithmetic of Bayes' rule, worked by hand.</summary>
public sealed class GroupTests
{
    [Theory]
    [InlineData(null, 0.941176)]
    [InlineData(GroupRule.Strongest, 0.8)]
    [InlineData(GroupRule.Shared, 0.8)]
    [InlineData(GroupRule.Joint, 0.8)]
    public void Same_signal_twice_counts_once_in_a_group(GroupRule? rule, double probability)
    {
        // Both codes come together or not at all.
        ImmutableArray<JointRow> both = rule != GroupRule.Joint
            ? []
            : [new("11", [0.8, 0.2, 0.5]), new("10", [0, 0, 0]), new("01", [0, 0, 0]), new("00", [0.2, 0.8, 0.5])];
        RankingModel model = Model(
            [("a", 1), ("b", 1)], 0, rule, both, ("one", [0.8, 0.2, 0.5]), ("two", [0.8, 0.2, 0.5]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("one", "two"));

        Assert.Equal(probability, ranking.ProbabilityOf("a"), rule == GroupRule.Joint ? 2e-3 : 5e-7);
    }

    [Theory]
    [InlineData(null, 0.810954, 0.169611, 0.019435)]
    [InlineData(GroupRule.Joint, 0.745763, 0.161017, 0.093220)]
    public void Joint_table_keeps_the_rest_alive(GroupRule? rule, double hose, double sensor, double rest)
    {
        ImmutableArray<JointRow> table = rule is null
            ? []
            :
            [
                new("11", [0.44, 0.19, 0.03]), new("10", [0.41, 0.01, 0.07]),
                new("01", [0.01, 0.61, 0.02]), new("00", [0.14, 0.19, 0.88]),
            ];
        RankingModel model = Model(
            [("hose", 0.30), ("sensor", 0.15)], 0.55, rule, table,
            ("low-boost", [0.85, 0.20, 0.10]), ("air-mass", [0.45, 0.80, 0.05]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("low-boost", "air-mass"));

        Assert.Equal(hose, ranking.ProbabilityOf("hose"), 5e-7);
        Assert.Equal(sensor, ranking.ProbabilityOf("sensor"), 5e-7);
        Assert.Equal(rest, ranking.ProbabilityOf(WeightedCause.SomethingElse), 5e-7);
    }

    [Fact]
    public void Unknown_member_of_a_joint_table_is_summed_out()
    {
        RankingModel model = Model(
            [("a", 1), ("b", 1)], 1, GroupRule.Joint,
            [
                new("11", [0.4, 0.1, 0.2]), new("10", [0.3, 0.2, 0.3]),
                new("01", [0.2, 0.3, 0.4]), new("00", [0.1, 0.4, 0.1]),
            ],
            ("one", [0.5, 0.5, 0.5]), ("two", [0.5, 0.5, 0.5]));

        // P(one | a) = 0.7, P(one | b) = 0.3, P(one | else) = 0.5.
        Assert.Equal(0.7 / 1.5, CauseRanking.Of(model, RankingModels.Present("one")).ProbabilityOf("a"), 1e-12);
    }

    [Fact]
    public void Strongest_member_speaks_alone_and_is_named()
    {
        RankingModel model = Model(
            [("a", 1), ("b", 1)], 1, GroupRule.Strongest, [], ("weak", [0.6, 0.4, 0.5]), ("strong", [0.9, 0.1, 0.5]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("weak", "strong"));

        Assert.Equal("strong", ranking.Causes[0].Weights.Single().Source);
        Assert.Equal(
            CauseRanking.Of(model, RankingModels.Present("strong")).ProbabilityOf("a"), ranking.ProbabilityOf("a"), 1e-12);
    }

    static RankingModel Model(
        (string Id, double Prior)[] causes,
        double elsePrior,
        GroupRule? rule,
        ImmutableArray<JointRow> table,
        params (string Id, double[] Likelihoods)[] findings) => RankingModel.Create(
            causes.Select(c => new Hypothesis(c.Id, c.Prior)),
            elsePrior,
            new()
            {
                Findings = [.. findings.Select(f => new Finding(f.Id, [.. f.Likelihoods]))],
                Groups = rule is null ? [] : [new("group", rule.Value, [.. findings.Select(f => f.Id)], table)],
            });
}
