using CsCheck;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

public sealed class FitAndScoreTests
{
    static readonly RankingModel Authored = RankingModel.Create(
        [new("hose", 2), new("sensor", 1)],
        1,
        new()
        {
            Findings = [new("whistle", [0.75, 0.25, 0.5])],
            Checks = [new("pressure", new(25), [new("leak", [0.9, 0.1, 0.1]), new("holds", [0.1, 0.9, 0.9])], [], [])],
        });

    // Source: definitions of both scores, worked by hand.
    [Fact]
    public void Scores_of_a_stated_distribution_are_met()
    {
        Assert.Equal(0.14, Scores.Brier([0.7, 0.2, 0.1], 0), 1e-12);
        Assert.Equal(0.356675, Scores.Log([0.7, 0.2, 0.1], 0), 5e-7);
    }

    // Arithmetic: (4 * 0.75 + 1) / (4 + 2), the words worth 4 cases; an unknown finding adds nothing.
    [Fact]
    public void Cases_move_the_authors_numbers()
    {
        RankingModel fitted = Fit(Authored, 4,
            Case("hose", RankingModels.Present("whistle").WithOutcome("pressure", "leak"), "whistle"),
            Case("hose", Answers.Nothing.With("whistle", false), "whistle"),
            Case("hose", Answers.Nothing),
            Case("mice", Answers.Nothing));

        Assert.Equal([5, 1, 2], fitted.Hypotheses.Select(h => h.Prior));
        Assert.Equal(4.0 / 6, fitted.Findings[0].Likelihoods[0], 1e-12);
        Assert.Equal(0.25, fitted.Findings[0].Likelihoods[1], 1e-12);
        Assert.Equal((4 * 0.9 + 1) / 5, fitted.Checks[0].Outcomes[0].Likelihoods[0], 1e-12);
        Assert.Equal((4 * 0.1) / 5, fitted.Checks[0].Outcomes[1].Likelihoods[0], 1e-12);
    }

    // Presence that is reported and absence that never is: the share among reports would be 1 whatever the truth.
    [Fact]
    public void Finding_whose_absence_nobody_reports_is_not_moved()
    {
        RankingModel fitted = Fit(Authored, 4, Case("hose", RankingModels.Present("whistle")), Case("hose", RankingModels.Present("whistle")));

        Assert.Equal(Authored.Findings[0].Likelihoods, fitted.Findings[0].Likelihoods);
        Assert.Equal(4, fitted.Hypotheses[0].Prior);
    }

    [Fact]
    public void Case_that_may_have_passed_a_finding_over_says_nothing_where_others_looked_for_it()
    {
        SolvedCase looked = Case("hose", Answers.Nothing.With("whistle", false), "whistle");

        RankingModel with = Fit(Authored, 4, looked, Case("hose", RankingModels.Present("whistle")));

        Assert.Equal(4 * 0.75 / 5, with.Findings[0].Likelihoods[0], 1e-12);
    }

    /// <summary>
    /// 400 cases of a cause that shows the sign in 6 of 10, told by nine owners of ten who had it and by two of ten who had
    /// not: among the reports alone it would be 216 of 248, or 0.87.
    /// </summary>
    [Fact]
    public void Silence_is_weighed_by_what_owners_are_wont_to_tell()
    {
        double share = new ReportHabit(0.9, 0.2).Shift(0.35, 4, new(Present: 216, Absent: 32, Silent: 400 - 248));

        Assert.Equal(0.6, share, 0.01);
        Assert.Equal(0.35, new ReportHabit(0.7, 0.7).Shift(0.35, 4, new(0, 0, 50)), 1e-9); // silence that means nothing moves nothing
    }

    // 16 cases, of which the word expects 12 with the sign and 4 without; 9 and 1 are told.
    [Fact]
    public void Habit_is_what_was_told_against_what_the_words_expect()
    {
        SolvedCase[] cases =
        [
            .. Enumerable.Range(0, 9).Select(_ => Case("hose", RankingModels.Present("whistle"))),
            Case("hose", Answers.Nothing.With("whistle", false)),
            .. Enumerable.Range(0, 6).Select(_ => Case("hose", Answers.Nothing)),
        ];

        ReportHabit habit = FitBasis.Of(Authored, CaseCounts.Of(Authored, cases)).Habit;

        Assert.Equal(9.0 / 12, habit.TellsPresent, 1e-12);
        Assert.Equal(1.0 / 4, habit.TellsAbsent, 1e-12);
    }

    // Two causes without a statement: 0.1 worth 4 and 1 of 6 together make 0.14; then each its own, worth 4 again.
    [Fact]
    public void Likelihoods_that_nobody_stated_lean_on_each_other()
    {
        RankingModel authored = RankingModel.Create(
            [new("hose", 1), new("sensor", 1), new("pump", 1)],
            1,
            new() { Findings = [new("code", LikelihoodRow.Of(4, 0.1, [(0, 0.9), (3, 0.1)])) { OthersAreStrays = true }] });
        SolvedCase[] cases =
        [
            Case("sensor", RankingModels.Present("code"), "code"),
            .. Enumerable.Range(0, 5).Select(_ => Case("sensor", Answers.Nothing.With("code", false), "code")),
        ];

        RankingModel fitted = Fit(authored, 1024, cases);

        Assert.Equal(0.14, fitted.Findings[0].Likelihoods[2], 1e-12);
        Assert.Equal(((4 * 0.14) + 1) / 10, fitted.Findings[0].Likelihoods[1], 1e-12);
        Assert.Equal(0.9, fitted.Findings[0].Likelihoods[0], 1e-12);
    }

    /// <summary>Where cases bear the words out they weigh much, where cases contradict them they weigh little.</summary>
    [Theory]
    [InlineData(3, 1, 1024)]
    [InlineData(1, 19, 1)]
    public void Worth_of_the_words_is_what_foretells_the_cases_best(int present, int absent, double worth)
    {
        SolvedCase[] cases =
        [
            .. Enumerable.Range(0, present).Select(_ => Case("hose", RankingModels.Present("whistle"), "whistle")),
            .. Enumerable.Range(0, absent).Select(_ => Case("hose", Answers.Nothing.With("whistle", false), "whistle")),
        ];

        Assert.Equal(worth, FitBasis.Of(Authored, CaseCounts.Of(Authored, cases)).Worth);
    }

    [Fact]
    public void Counts_without_a_case_are_those_of_the_other_cases()
    {
        SolvedCase one = Case("hose", RankingModels.Present("whistle").WithOutcome("pressure", "leak"), "whistle");
        SolvedCase other = Case("sensor", Answers.Nothing.With("whistle", false), "whistle");
        FitBasis basis = new(8, new(0.9, 0.3));

        RankingModel left = ModelFit.Of(Authored, CaseCounts.Of(Authored, [one, other]).Without(one), basis);
        RankingModel fresh = ModelFit.Of(Authored, CaseCounts.Of(Authored, [other]), basis);

        Assert.Equal(fresh.Hypotheses.Select(h => h.Prior), left.Hypotheses.Select(h => h.Prior));
        Assert.Equal(fresh.Findings[0].Likelihoods, left.Findings[0].Likelihoods);
        Assert.Equal(fresh.Checks[0].Outcomes.SelectMany(o => o.Likelihoods), left.Checks[0].Outcomes.SelectMany(o => o.Likelihoods));
    }

    /// <summary>A scan names the codes it found; that it did not find the others has to count as if it had said so.</summary>
    [Fact]
    public void What_was_looked_for_and_is_not_named_was_not_there()
    {
        RankingModel authored = RankingModel.Create(
            [new("hose", 2), new("sensor", 1), new("pump", 1)],
            1,
            new() { Findings = [Code("P0299", 0), Code("P0234", 1), Code("P0101", 1)] });
        HashSet<string> engine = ["P0299", "P0234", "P0101"];
        Answers found = RankingModels.Present("P0299");
        SolvedCase[] named =
        [
            new("one", "hose", found with { LookedFor = engine }),
            new("two", "sensor", Answers.Nothing with { LookedFor = engine }),
            new("three", "pump", Answers.Nothing),
        ];
        SolvedCase[] spelledOut = [.. named.Select(c => c with { Answers = engine.Where(c.Answers.Knows).Aggregate(c.Answers, (a, code) => a.With(code, a.Has(code) == true)) })];

        foreach (int leftOut in (int[])[0, 1, 2])
        {
            var (implied, told) = (Without(named, leftOut), Without(spelledOut, leftOut));
            foreach (var (one, other) in implied.Findings.Zip(told.Findings))
                Assert.Equal(other.Likelihoods, one.Likelihoods);
            Assert.Equal(
                CauseRanking.Probabilities(told, spelledOut[leftOut].Answers), CauseRanking.Probabilities(implied, named[leftOut].Answers));
        }

        static Finding Code(string id, int cause) => new(id, LikelihoodRow.Of(4, 0.01, [(cause, 0.9), (3, 0.2)])) { OthersAreStrays = true };

        RankingModel Without(SolvedCase[] cases, int one) =>
            ModelFit.Of(authored, CaseCounts.Of(authored, cases).Without(cases[one]), new(8, new(0.9, 0.3)));
    }

    [Fact]
    public void Part_of_a_model_that_the_answers_speak_of_ranks_as_the_whole()
    {
        RankingModel whole = RankingModel.Create(
            [new("hose", 2), new("sensor", 1)],
            1,
            new()
            {
                Findings = [new("one", [0.8, 0.3, 0.5]), new("two", [0.6, 0.2, 0.5]), new("three", [0.9, 0.1, 0.5])],
                Groups = [new("both", GroupRule.Shared, ["one", "two"], [])],
                Checks = Authored.Checks,
            });
        Answers answers = Answers.Nothing.With("two", true);

        RankingModel part = new ModelIndex(whole).Reduced(answers);

        Assert.Equal(["one", "two"], part.Findings.Select(f => f.Id));
        Assert.Empty(part.Checks);
        Assert.Equal(
            CauseRanking.Of(whole, answers).Causes.Select(c => (c.Id, c.Probability)),
            CauseRanking.Of(part, answers).Causes.Select(c => (c.Id, c.Probability)));
    }

    [Fact]
    public void Joint_table_moves_only_by_cases_that_know_all_its_members()
    {
        RankingModel authored = RankingModel.Create(
            [new("hose", 1)],
            1,
            new()
            {
                Findings = [new("one", [0.5, 0.5]), new("two", [0.5, 0.5])],
                Groups =
                [
                    new("both", GroupRule.Joint, ["one", "two"],
                        [new("11", [0.4, 0.25]), new("10", [0.2, 0.25]), new("01", [0.2, 0.25]), new("00", [0.2, 0.25])]),
                ],
            });

        RankingModel fitted = Fit(
            authored, 4, Case("hose", RankingModels.Present("one", "two")), Case("hose", RankingModels.Present("one")));

        Assert.Equal((4 * 0.4 + 1) / 5, fitted.Groups[0].Joint[0].Likelihoods[0], 1e-12);
        Assert.Equal(4 * 0.2 / 5, fitted.Groups[0].Joint[1].Likelihoods[0], 1e-12);
    }

    // The model never changes here, so every number can be worked by hand: priors 2, 1, 1 of 4 and no findings.
    [Fact]
    public void Report_sums_hits_scores_and_reliability()
    {
        LeaveOneOut report = Report(Authored, "hose", "hose", "sensor", "mice");

        Assert.Equal(new Proportion(2, 4), report.First);
        Assert.Equal(new Proportion(4, 4), report.FirstThree);
        // 0.5, 0.25, 0.25: 0.375 when the first is true, 0.875 when another is.
        Assert.Equal((0.375 * 2 + 0.875 * 2) / 4, report.Brier!.Value, 1e-12);
        Assert.Equal((2 * Math.Log(2) + 2 * Math.Log(4)) / 4, report.LogScore!.Value, 1e-12);
        Assert.Equal(new Proportion(2, 8), report.Reliability[2].CameTrue);
        Assert.Equal(0.25, report.Reliability[2].MeanStated!.Value, 1e-12);
        Assert.Equal(new Proportion(2, 4), report.Reliability[5].CameTrue);
        Assert.Null(report.Reliability[9].MeanStated);
    }

    [Fact]
    public void Without_cases_there_are_no_scores()
    {
        LeaveOneOut report = LeaveOneOut.Of([]);

        Assert.Null(report.Brier);
        Assert.Null(report.LogScore);
        Assert.Null(report.First.Share);
    }

    // By definition: each answer that was looked for and each outcome is taken out, and foretold by the others of its cause.
    [Fact]
    public void Worth_of_the_words_is_the_one_under_which_the_other_cases_foretell_each_best() =>
        Gen.Select(Gen.Int[0, 2], Gen.Bool, Gen.Bool, Gen.Int[0, 2]).Array[1, 14].Sample(told =>
        {
            SolvedCase[] cases = [.. told.Select(t => Told(t.Item1, t.Item2, t.Item3, t.Item4))];
            List<(string Asked, string Seen, double Stated)> seen = [];
            foreach (var (cause, looks, present, outcome) in told)
            {
                double word = Authored.Findings[0].Likelihoods[cause];
                if (looks)
                    seen.Add(($"whistle {cause}", $"{present}", present ? word : 1 - word));
                if (outcome > 0)
                    seen.Add(($"pressure {cause}", $"{outcome}", Authored.Checks[0].Outcomes[outcome - 1].Likelihoods[cause]));
            }

            double Score(double worth) => seen.Sum(s => Math.Log(Math.Max(1e-12,
                ((worth * s.Stated) + seen.Count(o => (o.Asked, o.Seen) == (s.Asked, s.Seen)) - 1) / (worth + seen.Count(o => o.Asked == s.Asked) - 1))));
            double chosen = FitBasis.Of(Authored, CaseCounts.Of(Authored, cases)).Worth;

            Assert.Equal(Enumerable.Range(0, 11).Max(k => Score(1 << k)), Score(chosen), 1e-9);
            Assert.All(Enumerable.Range(0, 11).Where(k => 1 << k > chosen), k => Assert.True(Score(1 << k) < Score(chosen)));
        });

    [Fact]
    public void What_nobody_looked_for_says_nothing_of_what_a_word_is_worth() => Assert.Equal(
        1024, FitBasis.Of(Authored, CaseCounts.Of(Authored, [Case("hose", RankingModels.Present("whistle")), Case("hose", RankingModels.Present("whistle"))])).Worth);

    // What is looked for is told either way, and of something else no author has a word: neither says what owners are wont to tell.
    [Fact]
    public void Habit_counts_neither_what_was_looked_for_nor_something_else()
    {
        RankingModel authored = Authored with { Findings = [Authored.Findings[0], new("smoke", [0.5, 0.25, 0.5])] };
        SolvedCase[] cases =
        [
            Case("hose", RankingModels.Present("whistle", "smoke"), "whistle"),
            Case("hose", Answers.Nothing.With("smoke", false), "whistle"),
            Case("hose", Answers.Nothing, "whistle"),
            Case("hose", Answers.Nothing, "whistle"),
            Case("mice", RankingModels.Present("smoke"), "whistle"),
        ];

        ReportHabit habit = FitBasis.Of(authored, CaseCounts.Of(authored, cases)).Habit;

        Assert.Equal((0.5, 0.5), (habit.TellsPresent, habit.TellsAbsent));
    }

    // More is told than the words expect, nothing is told, and nothing is expected.
    [Fact]
    public void Habit_stays_between_0_and_1()
    {
        SolvedCase[] cases = [.. Enumerable.Range(0, 4).Select(_ => Case("sensor", RankingModels.Present("whistle")))];

        ReportHabit habit = FitBasis.Of(Authored, CaseCounts.Of(Authored, cases)).Habit;
        ReportHabit nobody = FitBasis.Of(Authored, CaseCounts.Of(Authored, [])).Habit;

        Assert.Equal((0.999, 0.001), (habit.TellsPresent, habit.TellsAbsent));
        Assert.Equal((0.5, 0.5), (nobody.TellsPresent, nobody.TellsAbsent));
    }

    // The sensor and the pump without a word: one told of it, two told that it was not there, four said nothing.
    [Fact]
    public void Likelihoods_that_nobody_stated_lean_on_each_other_by_what_owners_are_wont_to_tell()
    {
        RankingModel authored = RankingModel.Create(
            [new("hose", 1), new("sensor", 1), new("pump", 1)],
            1,
            new() { Findings = [new("code", LikelihoodRow.Of(4, 0.1, [(0, 0.9), (3, 0.1)])) { OthersAreStrays = true }] });
        SolvedCase[] cases =
        [
            Case("sensor", RankingModels.Present("code")), Case("sensor", Answers.Nothing.With("code", false)), Case("sensor", Answers.Nothing.With("code", false)),
            .. Enumerable.Range(0, 3).Select(_ => Case("sensor", Answers.Nothing)), Case("pump", Answers.Nothing),
            Case("hose", RankingModels.Present("code")), Case("hose", Answers.Nothing), Case("mice", Answers.Nothing.With("code", false)),
        ];
        ReportHabit habit = new(0.9, 0.3); // unlike each other, or silence would say nothing

        LikelihoodRow fitted = ModelFit.Of(authored, CaseCounts.Of(authored, cases), new(1024, habit)).Findings[0].Likelihoods;

        double pooled = habit.Shift(0.1, 4, new(Present: 1, Absent: 2, Silent: 4));
        Assert.Equal(habit.Shift(pooled, 4, new(1, 2, 3)), fitted[1], 1e-12);
        Assert.Equal(habit.Shift(pooled, 4, new(0, 0, 1)), fitted[2], 1e-12);
        Assert.Equal(habit.Shift(0.9, 1024, new(1, 0, 1)), fitted[0], 1e-12);
        Assert.Equal(habit.Shift(0.1, 4, new(0, 1, 0)), fitted[3], 1e-12); // of something else an author's word is worth four cases
    }

    [Fact]
    public void Counts_of_a_finding_add_up_and_can_be_taken_away()
    {
        Assert.Equal(new Shown(7, 10, 13), new Shown(2, 3, 5) + new Shown(5, 7, 8));
        Assert.Equal(new Shown(3, 4, 3), new Shown(5, 7, 8) - new Shown(2, 3, 5));
    }

    [Fact]
    public void A_case_left_out_is_one_fewer_of_all()
    {
        SolvedCase[] cases = [Case("hose", RankingModels.Present("whistle")), Case("sensor", Answers.Nothing.With("whistle", false)), Case("hose", Answers.Nothing)];
        CaseCounts counts = CaseCounts.Of(Authored, cases);

        Assert.Equal(new Shown(1, 1, 1), counts.Of("whistle").All());
        Assert.Equal(new Shown(0, 1, 1), counts.Without(cases[0]).Of("whistle").All());
        Assert.Equal(new Shown(1, 1, 0), counts.Without(cases[2]).Of("whistle").All());
    }

    [Fact]
    public void A_search_left_out_is_one_fewer_of_all()
    {
        HashSet<string> wanted = ["whistle"];
        SolvedCase[] cases =
        [
            .. new[] { Answers.Nothing.With("whistle", true), Answers.Nothing, Answers.Nothing }.Select((a, i) => new SolvedCase($"{i}", "hose", a with { LookedFor = wanted })),
        ];
        CaseCounts counts = CaseCounts.Of(Authored, cases);

        Assert.Equal(new Shown(1, 2, 0), counts.Of("whistle").All());
        Assert.Equal(new Shown(1, 1, 0), counts.Without(cases[2]).Of("whistle").All());
    }

    // One cause's owners never tell of absence, another's do: then it can be weighed.
    [Fact]
    public void Finding_whose_absence_somebody_reports_is_moved()
    {
        RankingModel fitted = Fit(Authored, 4, Case("hose", RankingModels.Present("whistle")), Case("sensor", Answers.Nothing.With("whistle", false)));

        Assert.NotEqual(Authored.Findings[0].Likelihoods.ToArray(), fitted.Findings[0].Likelihoods.ToArray());
    }

    // Worked by hand: 6.5, 3.495 and 0.005 of ten; the last is raised to the least, and all are scaled by 1.0045.
    [Fact]
    public void Outcome_that_cases_make_all_but_impossible_keeps_the_least_chance()
    {
        RankingModel authored = RankingModel.Create(
            [new("hose", 1)],
            1,
            new() { Checks = [new("look", new(5), [new("split", [0.5, 0.4]), new("loose", [0.495, 0.3]), new("whole", [0.005, 0.3])], [], [])] });
        SolvedCase[] cases =
        [
            .. Enumerable.Range(0, 9).Select(i => Case("hose", Answers.Nothing.WithOutcome("look", i < 6 ? "split" : "loose"))),
        ];

        RankingModel fitted = Fit(authored, 1, cases);

        Assert.Equal([0.65 / 1.0045, 0.3495 / 1.0045, 0.005 / 1.0045], fitted.Checks[0].Outcomes.Select(o => o.Likelihoods[0]), (a, b) => Math.Abs(a - b) < 1e-12);
    }

    // Priors 2, 1, 1 and 1: of the equal ones a, b and something else stand by id; mice are something else.
    [Theory]
    [InlineData("c", 0)]
    [InlineData("a", 1)]
    [InlineData("b", 2)]
    [InlineData("mice", 3)]
    public void Place_of_a_case_is_how_many_causes_stand_before_its_own(string cause, int place)
    {
        RankingModel model = RankingModels.Make([("b", 1), ("a", 1), ("c", 2)], 1);

        Assert.Equal(place, Trial(model, cause).Place);
    }

    [Fact]
    public void Report_counts_first_and_first_three_places()
    {
        RankingModel model = RankingModels.Make([("b", 1), ("a", 1), ("c", 2)], 1);

        LeaveOneOut report = Report(model, "c", "c", "c", "b", "mice");

        Assert.Equal(new Proportion(3, 5), report.First);
        Assert.Equal(new Proportion(4, 5), report.FirstThree);
        Assert.Equal([(0, 0.1), (0.4, 0.5), (0.9, 1)], ((int[])[0, 4, 9]).Select(b => (report.Reliability[b].Stated.Low, report.Reliability[b].Stated.High)));
    }

    [Fact]
    public void Certainty_belongs_to_the_last_range()
    {
        LeaveOneOut report = Report(RankingModels.Make([], 1), "mice");

        Assert.Equal(new Proportion(1, 1), report.Reliability[9].CameTrue);
    }

    static LeaveOneOut Report(RankingModel model, params string[] causes) => LeaveOneOut.Of([.. causes.Select(c => Trial(model, c))]);

    /// <summary>A case that answers nothing; of a cause that the model lacks it is something else.</summary>
    static RankingTrial Trial(RankingModel model, string cause)
    {
        SolvedCase one = Case(cause, Answers.Nothing);
        CaseEvidence seen = new UnseenCases(model, CaseCounts.Of(model, [one]), new(1, new(0.9, 0.9))).ByAuthor(one);
        return RankingTrial.Of(model, seen.Priors, seen.BySigns, seen.Truth);
    }

    static SolvedCase Told(int cause, bool looks, bool present, int outcome)
    {
        // Who did not look tells of what was there, and that is no evidence of how often it is.
        Answers answers = looks || present ? Answers.Nothing.With("whistle", present) : Answers.Nothing;
        answers = outcome == 0 ? answers : answers.WithOutcome("pressure", outcome == 1 ? "leak" : "holds");
        return Case(cause == 2 ? "mice" : Authored.Hypotheses[cause].Id, answers, looks ? ["whistle"] : []);
    }

    static RankingModel Fit(RankingModel authored, double worth, params SolvedCase[] cases) =>
        ModelFit.Of(authored, CaseCounts.Of(authored, cases), new(worth, new(0.9, 0.9)));

    static SolvedCase Case(string cause, Answers answers, params string[] lookedFor) =>
        new("case", cause, answers with { LookedFor = lookedFor.ToHashSet() });
}
