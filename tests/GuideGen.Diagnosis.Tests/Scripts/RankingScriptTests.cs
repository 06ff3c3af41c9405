using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Diagnosis.Tests.Ranking;
using GuideGen.Testing;

namespace GuideGen.Diagnosis.Tests.Scripts;

/// <summary>The browser ranks as the build does: the same rows on both sides, then random models.</summary>
public sealed class RankingScriptTests : IDisposable
{
    const double Near = 1e-9;

    static readonly JsonSerializerOptions PackedJson = new(BrowserScript.Json) { Converters = { new PackedRowJson() } };

    readonly BrowserScript script = new("ranking.js");

    public void Dispose() => script.Dispose();

    public static TheoryData<string> Names { get; } = [.. Vectors().Select(v => v.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Shared_vectors_hold_on_both_sides(string name)
    {
        RankingVector vector = Vectors().Single(v => v.Name == name);
        RankingModel model = RankingModel.Create(vector.Causes, vector.Else, vector.Parts);
        CauseRanking ranking = CauseRanking.Of(model, vector.Answers);

        foreach ((string id, double probability) in vector.Expected)
            Assert.Equal(probability, ranking.ProbabilityOf(id), vector.Tolerance);
        Same(model, vector.Answers);
    }

    [Fact]
    public void Random_models_rank_alike_on_both_sides() =>
        RankingModels.RandomWithAnswers.Sample((model, answers) => Same(model, answers), iter: Tries.Of(150), threads: 1);

    [Fact]
    public void Packed_model_opens_to_what_it_was() => RankingModels.Random.Sample(
        model =>
        {
            string opened = script.Call<JsonElement>("ranking.unpack", Packed(model)).GetRawText();

            Assert.True(JsonNode.DeepEquals(
                JsonSerializer.SerializeToNode(model, BrowserScript.Json), JsonNode.Parse(opened)));
        },
        iter: Tries.Of(60),
        threads: 1);

    [Fact]
    public void Packed_row_holds_its_usual_value_once()
    {
        RankingModel model = RankingModels.Make(
            [("a", 1), ("b", 1), ("c", 1), ("d", 1)], 1, ("whistle", [0.05, 0.05, 0.9, 0.05, 0.05]));

        Assert.Equal("[0.05,2,0.9]", Packed(model)["findings"]![0]!["likelihoods"]!.ToJsonString());
    }

    [Fact]
    public void Random_models_propose_the_same_next_checks() => RankingModels.RandomWithAnswers.Sample(
        (model, answers) =>
        {
            SameNext(model, answers, [], []);
            SameNext(model, answers, ["pressure gauge"], ["undertray-off"]);
        },
        iter: Tries.Of(80),
        threads: 1);

    [Fact]
    public void Several_faults_at_once_are_alike_on_both_sides() =>
        Gen.Select(Gen.Int[0, 22], Gen.Double[0, 0.6].Array[22], Gen.Double[0, 0.95].Array[66], Gen.Int[0, 2].Array[3]).Sample(
            (count, priors, links, seen) =>
            {
                // Every set of up to 18 faults would be a quarter of a million in an interpreter.
                int n = count is > 9 and <= NoisyOr.ExactUpTo ? 9 : count;
                Hypothesis[] faults = [.. priors[..n].Select((p, i) => new Hypothesis($"fault-{i:00}", p))];
                NoisyOrFinding[] findings =
                    [.. Enumerable.Range(0, 3).Select(f => new NoisyOrFinding($"finding-{f}", 0.02 * f, [.. links[(22 * f)..(22 * f + n)]]))];
                var present = seen.Select((s, f) => (s, f)).Where(s => s.s < 2).ToDictionary(s => $"finding-{s.f}", s => s.s == 1);

                NoisyOr expected = NoisyOr.Of([.. faults], [.. findings], present);
                NoisyOr actual = script.Call<NoisyOr>("ranking.severalFaults", faults, findings, present);

                Assert.Equal(expected.MostAtOnce, actual.MostAtOnce);
                Assert.Equal(expected.Causes.Select(c => c.Id), actual.Causes.Select(c => c.Id));
                Alike(expected.Causes.Select(c => c.Probability), actual.Causes.Select(c => c.Probability));
                Alike(expected.Likeliest.Select(s => s.Probability), actual.Likeliest.Select(s => s.Probability));
            },
            iter: Tries.Of(40),
            threads: 1);

    static JsonNode Packed(RankingModel model) => JsonSerializer.SerializeToNode(model, PackedJson)!;

    void Same(RankingModel model, Answers answers)
    {
        CauseRanking expected = CauseRanking.Of(model, answers);
        RankedCause[] actual = script.Call<RankedCause[]>("ranking.rank", model, answers);

        Assert.Equal(expected.Causes.Select(c => c.Id), actual.Select(c => c.Id));
        Alike(expected.Causes.Select(c => c.Probability), actual.Select(c => c.Probability));
        foreach ((RankedCause build, RankedCause browser) in expected.Causes.Zip(actual))
        {
            Assert.Equal(build.Weights.Select(w => w.Source), browser.Weights.Select(w => w.Source));
            Alike(build.Weights.Select(w => w.Log10), browser.Weights.Select(w => w.Log10));
        }
    }

    void SameNext(RankingModel model, Answers answers, string[] missingTools, string[] setupsDone)
    {
        ImmutableArray<NextCheck> expected = NextChecks.Of(model, answers, missingTools.ToHashSet(), setupsDone.ToHashSet());
        NextCheck[] actual = script.Call<NextCheck[]>("ranking.nextChecks", model, answers, missingTools, setupsDone);

        Assert.Equal(expected.Select(n => n.Check), actual.Select(n => n.Check));
        Alike(expected.Select(n => n.Minutes), actual.Select(n => n.Minutes));
        Alike(expected.Select(n => n.BitsPerMinute), actual.Select(n => n.BitsPerMinute));
        Alike(Effects(expected), Effects(actual));
    }

    static IEnumerable<double> Effects(IEnumerable<NextCheck> checks) => checks.SelectMany(n => n.Outcomes)
        .SelectMany(o => o.After.OrderBy(c => c.Id, StringComparer.Ordinal).Select(c => c.Probability).Prepend(o.Probability));

    static void Alike(IEnumerable<double> expected, IEnumerable<double> actual) =>
        Assert.Equal(expected, actual, (a, b) => Math.Abs(a - b) <= Near * Math.Max(1, Math.Abs(a)));

    static ImmutableArray<RankingVector> Vectors() => JsonSerializer.Deserialize<ImmutableArray<RankingVector>>(
        Repository.Read("tests", "GuideGen.Diagnosis.Tests", "Vectors", "ranking.json"), BrowserScript.Json);

    /// <param name="Name">What the row is about.</param>
    /// <param name="Source">Where its numbers come from.</param>
    /// <param name="Causes">Causes with their priors.</param>
    /// <param name="Else">Prior of something else.</param>
    /// <param name="Parts">The rest of the model.</param>
    /// <param name="Answers">What is known.</param>
    /// <param name="Expected">Probabilities by cause.</param>
    /// <param name="Tolerance">Half a unit of their last digit.</param>
    public sealed record RankingVector(
        string Name,
        string Source,
        ImmutableArray<Hypothesis> Causes,
        double Else,
        ModelParts Parts,
        Answers Answers,
        ImmutableDictionary<string, double> Expected,
        double Tolerance);
}
