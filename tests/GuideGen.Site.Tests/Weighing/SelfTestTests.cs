using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Views;
using GuideGen.Site.Weighing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Weighing;

public sealed class SelfTestTests
{
    static readonly GuideContent Demo = GuideLoader.Load(new FolderFiles(Repository.Root)).Guide;
    static readonly GuideWeights Weights = GuideWeights.Of(Demo);

    [Fact]
    public void Every_counted_case_is_tried_and_checks_help()
    {
        var test = SelfTest.Of(Weights);

        Assert.True(test.IsOfAll);
        Assert.Equal(Weights.Cases.Length, test.BySigns.First.Total);
        Assert.True(test.WithChecks.Brier < test.BySigns.Brier);
        Assert.True(test.BySigns.FirstThree.Count >= test.BySigns.First.Count);
    }

    [Fact]
    public void Of_too_many_cases_only_some_are_tried_and_the_page_says_how_many()
    {
        var plan = SitePlan.Make(Demo);
        var view = new ViewContext(plan, GuideTheme.Of(ThemeFiles.BuiltIn, Demo).Theme, Addresses.Evidence);

        var test = SelfTest.Of(Weights, 50);

        Assert.False(test.IsOfAll);
        Assert.All([test.ByAuthor, test.BySigns, test.WithChecks], t => Assert.Equal(50, t.First.Total));
        Assert.StartsWith("50 of the counted cases", SelfTestView.Tried(view, test), StringComparison.Ordinal);
        Assert.StartsWith("Each counted case", SelfTestView.Tried(view, SelfTest.Of(Weights)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 3, new int[0])]
    [InlineData(3, 3, new[] { 0, 1, 2 })]
    [InlineData(10, 5, new[] { 0, 2, 4, 6, 8 })]
    [InlineData(7, 3, new[] { 0, 2, 4 })]
    public void Of_too_many_cases_some_are_tried_that_lie_equally_far_apart(int all, int most, int[] tried) =>
        Assert.Equal(tried, SelfTest.Spread([.. Enumerable.Range(0, all)], most));

    [Fact]
    public void Reports_counted_for_a_code_are_the_proved_and_the_refuted_cases_that_show_it()
    {
        var evidence = new GuideEvidence(Demo, Weights);
        var code = Demo.Cases.SelectMany(c => c.Codes.Select(k => k.Key.Value).Distinct()).CountBy(c => c).MaxBy(c => c.Value).Key;

        var found = evidence.Of(code)!;

        Assert.Equal(Weights.Cases.Count(c => c.Answers.Findings.GetValueOrDefault(code.ToString())), found.Summary.Posterior.Cases);
        Assert.Equal(found.Summary.Posterior.Cases, found.Reports.Length);
        Assert.Equal(1, found.Summary.Causes.Sum(c => c.Mean), 1e-9);
        Assert.Equal(found.Summary.Posterior.Cases, found.Variants.Sum(v => v.Value.Posterior.Cases));
    }
}
