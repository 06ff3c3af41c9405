using GuideGen.Codes;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Tests.Scripts;

/// <summary>The page that weighs causes says of the demo guide what the build says, and draws its conclusions from it.</summary>
public sealed class WeighModelTests : IDisposable
{
    const double Near = 1e-9;

    static readonly CompiledSite Demo = CompiledSite.Of(Guides.Demo);
    static readonly Lazy<GuideWeights> Weights = new(() => GuideWeights.Of(Demo.Guide));

    readonly SiteScripts scripts = new(Demo, "data/weigh.js", "assets/ranking.js", "assets/weigh-address.js", "assets/weigh-model.js");

    public WeighModelTests() => scripts.Run("const data = GuideGen.weighModel.open(GuideGen.data.weigh); const weigh = (fragment, missing) => GuideGen.weighModel.weigh(data, GuideGen.weighAddress.read(fragment), missing);");

    public void Dispose() => scripts.Dispose();

    public static TheoryData<string> Fragments =>
    [
        "",
        "#w1;c=P0299",
        "#w1;v=w20d;c=P0101.P0299;s=reduced-power;a=black-smoke",
        "#w1;v=w18h;s=overheating",
        "#w1;v=w16p;c=P0299;n=P0234;o=look-over-air-path:nothing-seen",
        "#w1;v=w20d;c=P0299;r=1",
    ];

    [Theory, MemberData(nameof(Fragments))]
    public void Causes_and_next_checks_are_those_of_the_build(string fragment)
    {
        var said = scripts.Call<Said>("weigh", fragment, Array.Empty<string>());
        var state = scripts.Call<State>("GuideGen.weighAddress.read", fragment);
        var model = Weights.Value.Model(state.Variant);
        var answers = AnswersOf(state, model);
        var ranking = CauseRanking.Of(model, answers);

        Assert.Equal(ranking.Causes.Select(c => c.Id), said.Causes.Select(c => c.Id));
        Assert.All(ranking.Causes.Zip(said.Causes), pair => Assert.Equal(pair.First.Probability, pair.Second.Probability, Near));
        var next = NextChecks.Of(model, answers, new HashSet<string>(), new HashSet<string>());
        Assert.Equal(next.Select(n => n.Check), said.Next.Select(n => n.Check));
        Assert.All(next.Zip(said.Next), pair => Assert.Equal(pair.First.BitsPerMinute, pair.Second.BitsPerMinute, Near));
    }

    [Theory]
    [InlineData("#w1;s=oil-lamp", "stop-now")]
    [InlineData("#w1;v=w20d;c=P0299", "to-safety")]
    [InlineData("#w1;v=w20d;c=P0101.P0299;s=reduced-power;a=black-smoke", "gently")]
    public void The_gravest_answer_among_plausible_causes_and_symptoms_decides_how_to_drive(string fragment, string drive) =>
        Assert.Equal(drive, scripts.Call<Said>("weigh", fragment, Array.Empty<string>()).Drive?.Drive);

    [Fact]
    public void No_variant_has_a_cause_that_it_cannot_have()
    {
        var said = scripts.Call<Said>("weigh", "#w1;v=w18h;c=P0299", Array.Empty<string>());
        var barred = Demo.Guide.Faults.All.Where(f => !GuideWeights.Fits(f, "w18h")).Select(f => f.Origin.Slug).ToHashSet();

        Assert.NotEmpty(barred);
        Assert.All(said.Causes.Where(c => barred.Contains(c.Id)), c => Assert.Equal(0, c.Probability));
    }

    [Fact]
    public void Checks_that_need_a_missing_tool_are_not_proposed()
    {
        var check = Demo.Guide.Checks.All.First(c => c.Tools.Length > 0);
        var said = scripts.Call<Said>("weigh", "#w1;c=P0299", new[] { check.Tools[0].Value });

        Assert.DoesNotContain(check.Origin.Slug, said.Next.Select(n => n.Check));
    }

    // Signs of two faults that share none: no single fault of the guide has both.
    [Fact]
    public void Signs_that_no_single_fault_has_speak_for_two_at_once()
    {
        var said = scripts.Call<Said>("weigh", "#w1;v=w20d;c=P0299.P0335;s=stalls.whistle-under-load", Array.Empty<string>());

        Assert.NotNull(said.Together);
        Assert.True(said.Together.Faults.Length >= 2);
    }

    [Fact]
    public void One_fault_that_explains_everything_is_enough() =>
        Assert.Null(scripts.Call<Said>("weigh", "#w1;v=w20d;c=P0299;s=reduced-power", Array.Empty<string>()).Together);

    static Answers AnswersOf(State state, RankingModel model)
    {
        var findings = model.Findings.Select(f => f.Id).Where(id => state.AllRead && TroubleCode.TryParse(id, out _)).ToDictionary(id => id, _ => false);
        foreach (var (id, present) in state.Findings) findings[id] = present;
        var answers = findings.Aggregate(Answers.Nothing, (known, f) => known.With(f.Key, f.Value));
        return state.Outcomes.Aggregate(answers, (known, o) => known.WithOutcome(o.Key, o.Value));
    }

    sealed record State(string? Variant, Dictionary<string, bool> Findings, bool AllRead, Dictionary<string, string> Outcomes);

    sealed record Said(Share[] Causes, Proposed[] Next, Advice? Drive, Pair? Together);

    sealed record Share(string Id, double Probability);

    sealed record Proposed(string Check, double BitsPerMinute);

    sealed record Advice(string Name, string Drive);

    sealed record Pair(string[] Faults, double? Times);
}
