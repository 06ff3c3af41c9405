using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

public sealed class UnseenCasesTests
{
    const int Causes = 5, Codes = 9;

    static readonly ImmutableArray<string> Signs = [.. Enumerable.Range(0, Codes).Select(i => $"P{i}"), "whistle", "smoke"];

    // What a scan of the engine, of all units, and none tells either way.
    static readonly ImmutableArray<IReadOnlySet<string>> Searches =
        [Signs[..6].ToFrozenSet(), Signs[..Codes].ToFrozenSet(), FrozenSet<string>.Empty];

    /// <summary>Models as an author's page makes them: stray rates, codes in groups of every rule, checks.</summary>
    static Gen<RankingModel> Authored { get; } =
        from priors in Gen.Double[0.5, 5].Array[Causes]
        from stated in Gen.Select(Gen.Int[0, Causes - 1], Gen.Double[0.1, 0.95]).Array[0, 3].Array[Signs.Length]
        from strays in Gen.Double[0.01, 0.05].Array[Signs.Length]
        from allStated in Gen.Bool
        from rule in Gen.Enum<GroupRule>()
        from joint in Gen.Double[0.01, 1].Array[Causes + 1].Array[4]
        from outcomes in Gen.Double[0.01, 1].Array[Causes + 1].Array[2]
        select RankingModel.Create(
            priors.Select((p, i) => new Hypothesis($"cause-{i}", p)),
            0.8,
            new()
            {
                Findings = [.. Signs.Select((sign, i) => allStated && i == 8
                    ? new Finding(sign, [.. Enumerable.Range(0, Causes + 1).Select(h => 0.1 + (0.1 * h))])
                    : new Finding(sign, LikelihoodRow.Of(Causes + 1, strays[i], [.. stated[i].DistinctBy(s => s.Item1), (Causes, 0.2)])) { OthersAreStrays = true })],
                Groups =
                [
                    new("P0", GroupRule.Strongest, ["P0", "P1", "P7"], []),
                    new("P2", GroupRule.Strongest, ["P2", "P3"], []),
                    new("other", rule, ["P4", "smoke"], rule != GroupRule.Joint ? [] : [.. RankingModels.Normalised(joint).Select((row, i) => new JointRow(Convert.ToString(i, 2).PadLeft(2, '0'), [.. row]))]),
                ],
                Checks = [new("look", new(5), [.. RankingModels.Normalised(outcomes).Select((row, i) => new Outcome($"outcome-{i}", [.. row]))], [], [])],
            });

    /// <summary>Cases of the causes, of something else and of a cause that the model lacks.</summary>
    static Gen<SolvedCase[]> Cases { get; } =
        (from cause in Gen.Int[0, Causes]
         from search in Gen.Int[0, Searches.Length - 1]
         from told in Gen.Select(Gen.Int[0, Signs.Length], Gen.Bool).Array[0, 3]
         from outcome in Gen.Int[0, 2]
         select new SolvedCase("case", $"cause-{cause}", AnswersOf(search, told, outcome))).Array[1, 25];

    /// <summary>However the work is saved, the outcome is that of a fit without the case.</summary>
    [Fact]
    public void A_case_is_seen_as_by_a_model_that_is_fitted_without_it() => Gen.Select(Authored, Cases, Gen.Double[0.2, 0.9]).Sample(
        (authored, cases, tells) =>
        {
            CaseCounts counts = CaseCounts.Of(authored, cases);
            FitBasis basis = new(8, new(tells, 0.3));
            UnseenCases unseen = new(authored, counts, basis);

            Assert.All(cases, one => Same(one, ModelFit.Of(authored, counts.Without(one), basis), unseen.ByOthers(one)));
            Assert.All(cases, one => Same(one, authored, unseen.ByAuthor(one)));
        },
        iter: 500);

    // By hand: the rest of 1, 1, 2, 5, 5, 7 after one value is taken out, with another put in.
    [Theory]
    [InlineData(1, 3, 6)]
    [InlineData(7, 3, 4)]
    [InlineData(7, 9, 8)]
    [InlineData(2, 0, 7)]
    [InlineData(5, 5, 6)]
    public void How_far_a_row_reaches_with_one_value_replaced(double replaced, double by, double reach) =>
        Assert.Equal(reach, Extremes.Of([1, 1, 2, 5, 5, 7]).Spread(replaced, by));

    [Theory]
    [InlineData(1, 3, 4)]
    [InlineData(7, 3, 4)]
    public void How_far_it_reaches_where_the_value_was_the_only_outermost_one(double replaced, double by, double reach) =>
        Assert.Equal(reach, Extremes.Of([7, 5, 1, 3]).Spread(replaced, by));

    static void Same(SolvedCase one, RankingModel expected, CaseEvidence found)
    {
        Assert.Equal(expected.Priors, found.Priors);
        Assert.Equal(int.Parse(one.Cause.AsSpan(6), CultureInfo.InvariantCulture), found.Truth);
        Close(EvidenceTerms.Sum(EvidenceTerms.Of(expected, one.Answers with { Outcomes = Answers.Nothing.Outcomes }), Causes + 1), found.BySigns);
        Close(EvidenceTerms.Sum(EvidenceTerms.Of(expected, one.Answers), Causes + 1), found.WithChecks);
    }

    static void Close(double[] expected, double[] found) => Assert.Equal(expected, found, (a, b) => Math.Abs(a - b) < 1e-9);

    static Answers AnswersOf(int search, (int Sign, bool Present)[] told, int outcome)
    {
        Answers answers = told.Aggregate(Answers.Nothing, (a, t) => a.With(t.Sign < Signs.Length ? Signs[t.Sign] : "not-in-the-model", t.Present));
        return (outcome == 2 ? answers : answers.WithOutcome("look", $"outcome-{outcome}")) with { LookedFor = Searches[search] };
    }
}
