using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Tests;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Tests.Themes;

/// <summary>The rules about a guide's own look hold on their own examples, as a compile would find them.</summary>
public sealed class ThemeRuleTests
{
    public static TheoryData<string> Shown => new(ShownRules.OfLaterStages);

    [Theory, MemberData(nameof(Shown))]
    public void The_bad_example_breaks_the_rule(string id) => Assert.Contains(id, Broken(RuleExplanations.All[id].Bad));

    [Theory, MemberData(nameof(Shown))]
    public void The_good_example_breaks_no_rule(string id) => Assert.Empty(Broken(RuleExplanations.All[id].Good));

    static IEnumerable<string> Broken(ImmutableArray<RuleExample> examples)
    {
        var files = new MemoryFiles(ShownRules.Over(BaseGuide.Files(), examples));
        return SiteCompiler.Compile(files, ThemeFiles.BuiltIn, new MemoryTarget(2), new CompiledSite.Unheard()).Findings.Select(f => f.Rule.Id);
    }
}
