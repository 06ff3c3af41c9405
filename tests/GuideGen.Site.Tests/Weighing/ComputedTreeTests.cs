using System.Text;
using GuideGen.Guide;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Trees;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Tests.Weighing;

public sealed class ComputedTreeTests
{
    static readonly GuideReading Demo = GuideReading.Of(GuideLoader.Load(Guides.Open(Guides.Demo)));

    static readonly List<Tree> Built = [.. Demo.Guide.Trees.All.Where(t => t.Computed is not null)];

    [Fact]
    public void The_demo_guide_has_trees_that_the_tool_builds_and_no_rule_complains_of_them()
    {
        Assert.True(Built.Count >= 4, $"{Built.Count} computed trees");
        Assert.All(Built, t => Assert.False(t.IsUnbuilt));
        Assert.DoesNotContain(Demo.Findings, f => Built.Any(t => t.Name.Span.Path == f.Span.Path));
    }

    [Fact]
    public void Every_walk_ends_in_a_fault_or_in_advice_within_the_steps_that_are_allowed() => Assert.All(Built, tree =>
    {
        foreach (var walk in Walks(tree, tree.Start.Value, []))
        {
            Assert.True(walk.Count - 1 <= GuideLimits.StepsOfWalk, string.Join(" > ", walk));
            Assert.True(tree.Find(walk[^1]) is FaultNode or AdviceNode, string.Join(" > ", walk));
        }
    });

    [Fact]
    public void No_step_is_built_whose_answers_all_lead_to_the_same() => Assert.All(Built, tree =>
        Assert.All(tree.Nodes.Where(n => n.Value is BranchNode), n => Assert.True(n.Value.Ways.Select(w => w.Value.Value).Distinct().Count() > 1, $"{tree.Origin.Slug} {n.Key.Value}")));

    [Fact]
    public void Every_fault_that_shows_the_symptom_is_found_or_named_by_some_walk() => Assert.All(Built, tree =>
    {
        var named = tree.Nodes.SelectMany(n => n.Value switch { FaultNode f => [f.Fault.Value], AdviceNode a => a.Left.Select(l => l.Value), _ => (IEnumerable<string>)[] }).ToHashSet();
        var listed = Demo.Guide.Faults.All.Where(f => f.Symptoms.Any(s => s.Key.Value == tree.Symptom.Value)).Where(f => tree.Variants.IsEmpty || f.Variants.IsEmpty || f.Variants.Any(v => tree.Variants.Any(t => t.Value == v.Value)));
        Assert.Subset(named, listed.Select(f => f.Origin.Slug).ToHashSet());
    });

    [Fact]
    public void A_check_with_a_grave_hazard_comes_after_all_that_have_none_where_nothing_depends_on_it()
    {
        var order = Check(Changed("reduced-power", SmallTree));

        Assert.Equal(["do-look-over-air-path", "do-charge-air-pressure-test"], order);
    }

    [Fact]
    public void A_tool_that_is_not_at_hand_takes_its_checks_out_of_the_tree()
    {
        var order = Check(Changed("reduced-power", SmallTree + "without: [inflator]\n"));

        Assert.DoesNotContain("do-charge-air-pressure-test", order);
    }

    const string SmallTree = """
        name: Built
        summary: Built for a test.
        symptom: reduced-power
        variants: [w20d]
        order: computed
        checks: [charge-air-pressure-test, look-over-air-path]
        faults: [charge-air-hose-split]
        advice: Read the codes.
        drive: gently

        """;

    static IEnumerable<string> Check(Tree tree)
    {
        for (var name = tree.Start.Value; tree.Find(name) is DoNode step; name = step.CannotTell!.Value.Value) yield return name;
    }

    /// <summary>The demo guide with one tree written anew, as it is built from that.</summary>
    static Tree Changed(string slug, string text)
    {
        var path = $"content/trees/{slug}.yml";
        var files = Guides.Open(Guides.Demo);
        var loaded = GuideLoader.Load(new Overlay(files, path, Encoding.UTF8.GetBytes(text.Replace("without: [inflator]", "without: [\"inflator with regulator and gauge\"]", StringComparison.Ordinal))));
        return ComputedTrees.Fill(loaded.Guide, GuideWeights.Of(loaded.Guide)).Trees.Find(slug)!;
    }

    static IEnumerable<List<string>> Walks(Tree tree, string name, List<string> before)
    {
        List<string> here = [.. before, name];
        var ways = tree.Find(name)!.Ways.Select(w => w.Value.Value).Distinct().ToList();
        return ways.Count == 0 ? [here] : ways.SelectMany(w => Walks(tree, w, here));
    }

    sealed class Overlay(IGuideFiles files, string path, byte[] text) : IGuideFiles
    {
        public IReadOnlyList<string> Paths => files.Paths;

        public bool TryRead(string name, out byte[] bytes, out string why)
        {
            if (name != path) return files.TryRead(name, out bytes, out why);
            (bytes, why) = (text, "");
            return true;
        }
    }
}
