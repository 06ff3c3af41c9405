using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Demo;

/// <summary>The demo guide is rich enough to try everything on, and no rule finds anything in it, however little it would weigh.</summary>
public sealed class DemoBreadthTests
{
    static GuideContent Guide => DemoText.Guide;

    [Fact]
    public void Nothing_at_all_is_found_in_it() =>
        Assert.Empty(GuideReading.Of(GuideLoader.Load(Guides.Open(Guides.Demo)), new DateOnly(2026, 6, 1)).Findings.Select(FindingFormatter.ToLine));

    [Fact]
    public void There_is_something_on_whatever_a_reader_tries()
    {
        var codes = CodeUses.All(Guide).ToList();

        Assert.True(Guide.Faults.All.Length >= 60);
        Assert.True(Guide.Symptoms.All.Length >= 24);
        Assert.True(Guide.Trees.All.Length >= 20);
        Assert.True(Guide.Trees.All.Count(t => t.Computed is not null) >= 4);
        Assert.True(Guide.Checks.All.Length >= 70);
        Assert.True(Guide.Parts.All.Length >= 40);
        Assert.True(Guide.Tasks.All.Length >= 14);
        Assert.True(Guide.Cases.Length >= 220);
        Assert.True(Guide.Terms.Length >= 90);
        Assert.True(Guide.Assets.Count >= 25);
        Assert.True(codes.Count(c => CodeCatalogue.FindStandard(c) is not null) >= 220);
        Assert.True(codes.Count(c => CodeCatalogue.FindStandard(c) is null && Guide.Codes.Find(c.ToString()) is not null) >= 12);
    }

    [Fact]
    public void Every_fault_names_a_check_that_makes_sure_of_it() =>
        Assert.Empty(Guide.Faults.All.Where(f => f.Checks.IsEmpty).Select(f => f.Origin.Slug));
}
