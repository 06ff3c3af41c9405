using System.Collections.Immutable;
using CsCheck;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

public sealed class RankingPropertyTests
{
    static readonly HashSet<string> None = [];

    [Fact]
    public void Probabilities_sum_to_1_and_fall() => RankingModels.RandomWithAnswers.Sample((model, answers) =>
    {
        ImmutableArray<RankedCause> causes = CauseRanking.Of(model, answers).Causes;

        Assert.Equal(1, causes.Sum(c => c.Probability), 1e-12);
        Assert.Equal(causes.OrderByDescending(c => c.Probability), causes);
        Assert.Equal(model.Hypotheses.Select(h => h.Id).Order(), causes.Select(c => c.Id).Order());
    });

    [Fact]
    public void Finding_about_which_nothing_is_known_changes_nothing() =>
        RankingModels.RandomWithAnswers.Sample((model, answers) =>
        {
            Finding unknown = new("unknown", [.. model.Hypotheses.Select((_, i) => i % 2 == 0 ? 0.9 : 0.1)]);
            RankingModel longer = model with { Findings = model.Findings.Add(unknown) };

            Assert.Equal(Probabilities(model, answers), Probabilities(longer, answers));
            Assert.Equal(
                Probabilities(model, answers), Probabilities(model, answers.With("not-in-the-model", true)));
        });

    [Fact]
    public void Order_of_findings_is_nothing() => RankingModels.RandomWithAnswers.Sample((model, answers) =>
    {
        RankingModel turned = model with { Findings = [.. model.Findings.Reverse()] };
        var expected = Probabilities(model, answers);

        foreach ((string id, double probability) in Probabilities(turned, answers))
            Assert.Equal(expected[id], probability, 1e-12);
    });

    [Fact]
    public void Weights_and_priors_make_up_the_odds() => RankingModels.RandomWithAnswers.Sample((model, answers) =>
    {
        ImmutableArray<RankedCause> causes = CauseRanking.Of(model, answers).Causes;
        var prior = model.Hypotheses.ToDictionary(h => h.Id, h => h.Prior);
        RankedCause first = causes[0], second = causes[1];
        if (second.Probability < 1e-12)
            return;

        Assert.Equal(
            Math.Log10(first.Probability / second.Probability),
            Math.Log10(prior[first.Id] / prior[second.Id]) + first.Weights.Sum(w => w.Log10),
            1e-9);
    });

    [Fact]
    public void Outcomes_of_a_next_check_average_to_what_is_known_now() =>
        RankingModels.RandomWithAnswers.Sample((model, answers) =>
        {
            var now = Probabilities(model, answers);
            foreach (NextCheck next in NextChecks.Of(model, answers, None, None))
            {
                Assert.Equal(1, next.Outcomes.Sum(o => o.Probability), 1e-9);
                Assert.True(next.Bits >= 0);
                foreach ((string id, double probability) in now)
                {
                    double mean = next.Outcomes.Sum(o => o.Probability * o.After.Single(c => c.Id == id).Probability);
                    Assert.Equal(probability, mean, 1e-9);
                }
            }
        });

    [Fact]
    public void Doing_a_proposed_check_gives_what_was_foretold() =>
        RankingModels.RandomWithAnswers.Sample((model, answers) =>
        {
            foreach (NextCheck next in NextChecks.Of(model, answers, None, None))
            {
                OutcomeEffect effect = next.Outcomes[0];
                var after = Probabilities(model, answers.WithOutcome(next.Check, effect.Id));
                Assert.All(effect.After, c => Assert.Equal(after[c.Id], c.Probability, 1e-9));
            }
        });

    static Dictionary<string, double> Probabilities(RankingModel model, Answers answers) =>
        CauseRanking.Of(model, answers).Causes.ToDictionary(c => c.Id, c => c.Probability);
}
