using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

public sealed class RankingTests
{
    // Source: T. Mitchell 1997, Machine Learning, 6.9.1: a day that is sunny, cool, humid and windy.
    [Fact]
    public void Published_example_of_naive_bayes_is_met()
    {
        RankingModel model = RankingModels.Make(
            [("yes", 9.0 / 14), ("no", 5.0 / 14)], 0,
            ("sunny", [2.0 / 9, 3.0 / 5, 0.5]), ("cool", [3.0 / 9, 1.0 / 5, 0.5]),
            ("humid", [3.0 / 9, 4.0 / 5, 0.5]), ("windy", [3.0 / 9, 3.0 / 5, 0.5]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("sunny", "cool", "humid", "windy"));

        Assert.Equal(["no", "yes", WeightedCause.SomethingElse], ranking.Causes.Select(c => c.Id));
        Assert.Equal(0.795417349, ranking.ProbabilityOf("no"), 5e-10);
        Assert.Equal(0.005291005 / 0.020571429, ranking.ProbabilityOf("yes") / ranking.ProbabilityOf("no"), 1e-7);
    }

    // Source: as above; the products before they are made to sum to 1, found against a third hypothesis of known product.
    [Fact]
    public void Products_of_the_published_example_are_met()
    {
        const double Known = 0.5 * 0.5 * 0.5 * 0.5;
        RankingModel model = RankingModels.Make(
            [("yes", 9.0 / 14), ("no", 5.0 / 14)], 1,
            ("sunny", [2.0 / 9, 3.0 / 5, 0.5]), ("cool", [3.0 / 9, 1.0 / 5, 0.5]),
            ("humid", [3.0 / 9, 4.0 / 5, 0.5]), ("windy", [3.0 / 9, 3.0 / 5, 0.5]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("sunny", "cool", "humid", "windy"));

        Assert.Equal(0.005291005, Product("yes"), 5e-10);
        Assert.Equal(0.020571429, Product("no"), 5e-10);

        double Product(string cause) => Known * ranking.ProbabilityOf(cause) / ranking.ProbabilityOf(WeightedCause.SomethingElse);
    }

    // Source: D. M. Eddy 1982, as restated by G. Gigerenzer, U. Hoffrage 1995, Psych. Rev. 102:684-704 (from memory).
    [Fact]
    public void Rare_fault_stays_improbable_after_one_positive_test()
    {
        RankingModel model = RankingModels.Make([("fault", 0.01)], 0.99, ("test", [0.8, 0.096]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("test"));

        Assert.Equal(0.077639752, ranking.ProbabilityOf("fault"), 5e-10);
    }

    // Source: as above, in the counts that the same paper recommends: of 1000 about 103 test positive, and about 8 of these have it.
    [Fact]
    public void Rare_fault_is_told_in_counts_of_a_thousand()
    {
        RankingModel model = RankingModel.Create(
            [new("fault", 0.01)], 0.99, new() { Checks = [new("test", new(1), [new("positive", [0.8, 0.096]), new("negative", [0.2, 0.904])], [], [])] });

        OutcomeEffect positive = NextChecks.Of(model, Answers.Nothing, new HashSet<string>(), new HashSet<string>())[0].Outcomes[0];

        double readSo = 1000 * positive.Probability;
        Assert.Equal(103, Math.Round(readSo));
        Assert.Equal(8, Math.Round(readSo * positive.After.Single(c => c.Id == "fault").Probability));
    }

    // Arithmetic: log10(0.85 / 0.20), and the same with the other sign for the rival.
    [Fact]
    public void Weight_of_a_finding_is_the_log_of_its_ratio_against_the_best_other_cause()
    {
        RankingModel model = RankingModels.Make([("hose", 0.6), ("sensor", 0.35)], 0.05, ("whistle", [0.85, 0.20, 0.1]));

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("whistle"));

        Assert.Equal(0.6284, ranking.Causes[0].Weights.Single().Log10, 5.1e-5);
        Assert.Equal(-0.6284, ranking.Causes[1].Weights.Single().Log10, 5.1e-5);
    }

    [Fact]
    public void Impossible_and_certain_likelihoods_are_bounded()
    {
        RankingModel model = RankingModels.Make([("a", 1), ("b", 1)], 1, ("f", [0, 1, 0.5]));

        Assert.Equal([0.005, 0.995, 0.5], model.Findings[0].Likelihoods);
        Assert.InRange(CauseRanking.Of(model, RankingModels.Present("f")).ProbabilityOf("a"), 0.003, 0.004);
    }

    [Fact]
    public void Cause_that_the_variant_cannot_have_is_ruled_out_by_its_prior()
    {
        RankingModel model = RankingModels.Make([("a", 1), ("b", 1)], 1, ("f", [0.9, 0.1, 0.5])).WithPriors([0, 1, 1]);

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present("f"));

        Assert.Equal(0, ranking.ProbabilityOf("a"));
        Assert.Equal(1, ranking.Causes.Sum(c => c.Probability), 1e-12);
    }

    [Fact]
    public void Parts_that_do_not_fit_are_refused()
    {
        Finding fits = new("f", [0.5, 0.5]);
        ModelParts[] broken =
        [
            new() { Findings = [new("f", [0.5])] },
            new() { Findings = [new("f", [0.5, 1.5])] },
            new() { Findings = [fits, fits] },
            new() { Findings = [fits], Groups = [new("g", GroupRule.Strongest, ["strange"], [])] },
            new() { Findings = [fits], Groups = [new("g", GroupRule.Joint, ["f"], [new("1", [1, 1])])] },
            new() { Checks = [new("c", new(1), [new("o", [1, 1])], [], [])] },
            new() { Checks = [new("c", new(1), [new("o", [0.5, 1]), new("p", [0.4, 0])], [], [])] },
            new() { Checks = [new("c", new(1), [new("o", [1.5, 1]), new("p", [-0.5, 0])], [], [])] },
            new() { Checks = [Look("c"), Look("c")] },
            new() { Findings = [fits], Groups = [new("g", GroupRule.Strongest, ["f", "strange"], [])] },
            new() { Findings = [fits], Groups = [new("g", GroupRule.Strongest, ["f"], []), new("h", GroupRule.Strongest, ["f"], [])] },
            Joint("11", "10", "01"),
            Joint("11", "10", "01", "01"),
            Joint("11", "10", "01", "0x"),
            Joint("11", "10", "01", "000"),
            Joint("11", "10", "01", "00") with { Groups = [new("g", GroupRule.Joint, ["f", "g"], [.. Joint("11", "10", "01", "00").Groups[0].Joint.Select(r => r with { Likelihoods = [0.2, 0.25] })])] },
        ];
        Hypothesis[][] impossible =
        [
            [new("a", 0)], [new("a", -1), new("b", 5)], [new("a", double.PositiveInfinity)], [new("a", double.NaN), new("b", 1)], [new("a", 1), new("a", 1)],
        ];

        Assert.All(broken, parts =>
            Assert.Throws<ArgumentException>(() => RankingModel.Create([new("a", 1)], 1, parts)));
        Assert.All(impossible, causes => Assert.Throws<ArgumentException>(() => RankingModel.Create(causes, 0, new())));
        Assert.Throws<ArgumentException>(() => RankingModel.Create([new("a", 1)], 1, new()).WithPriors([1]));
        RankingModel.Create([new("a", 1)], 1, Joint("11", "10", "01", "00")); // a table that is whole

        static UncertainCheck Look(string id) => new(id, new(1), [new("o", [0.5, 1]), new("p", [0.5, 0])], [], []);

        static ModelParts Joint(params string[] patterns) => new()
        {
            Findings = [new("f", [0.5, 0.5]), new("g", [0.5, 0.5])],
            Groups = [new("g", GroupRule.Joint, ["f", "g"], [.. patterns.Select(p => new JointRow(p, [1.0 / patterns.Length, 1.0 / patterns.Length]))])],
        };
    }

    [Fact]
    public void Without_causes_it_is_something_else()
    {
        CauseRanking ranking = CauseRanking.Of(RankingModels.Make([], 1, ("f", [0.5])), RankingModels.Present("f"));

        Assert.Equal([(WeightedCause.SomethingElse, 1.0)], ranking.Causes.Select(c => (c.Id, c.Probability)));
        Assert.Equal([0.0], ranking.Causes[0].Weights.Select(w => w.Log10));
    }

    // A thousand signs of which half speak for each: the products are beyond the greatest and the smallest number there is.
    [Fact]
    public void Ever_so_many_findings_leave_probabilities()
    {
        RankingModel model = RankingModels.Make(
            [("a", 1)], 1, [("f0", [0.01, 0.005]), .. Enumerable.Range(1, 1000).Select(i => ($"f{i}", (double[])(i % 2 == 0 ? [0.9, 0.005] : [0.005, 0.9])))]);

        CauseRanking ranking = CauseRanking.Of(model, RankingModels.Present([.. Enumerable.Range(0, 1001).Select(i => $"f{i}")]));

        Assert.Equal(2.0 / 3, ranking.ProbabilityOf("a"), 1e-9);
    }

    [Fact]
    public void Outcome_that_the_check_does_not_have_says_nothing()
    {
        RankingModel model = RankingModel.Create(
            [new("a", 1)], 1, new() { Checks = [new("c", new(1), [new("o", [0.9, 0.1]), new("p", [0.1, 0.9])], [], [])] });

        Assert.Equal(0.5, CauseRanking.Of(model, Answers.Nothing.WithOutcome("c", "gone")).ProbabilityOf("a"), 1e-12);
    }

    [Fact]
    public void What_was_told_or_looked_for_is_known()
    {
        Answers answers = RankingModels.Present("told") with { LookedFor = new HashSet<string> { "looked-for" } };

        Assert.Equal([true, true, false], ((string[])["told", "looked-for", "other"]).Select(answers.Knows));
    }
}
