using AngleSharp.Dom;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>A tree can be walked by its links alone, without script.</summary>
public sealed class TreeTests
{
    public static TheoryData<string> All => [Guides.Small, Guides.Demo, Guides.Hostile];

    [Theory, MemberData(nameof(All))]
    public void The_first_step_on_the_page_is_where_the_walk_begins(string guide) => Each(guide, (tree, document) =>
        Assert.Equal(tree.Start.Value, document.QuerySelectorAll("main [id]").First(e => tree.Find(e.Id!) is not null).Id));

    [Theory, MemberData(nameof(All))]
    public void Links_lead_from_the_first_step_to_every_other(string guide) => Each(guide, (tree, document) =>
    {
        var reached = new HashSet<string> { tree.Start.Value };
        var open = new Queue<string>(reached);
        while (open.TryDequeue(out var step))
        {
            foreach (var to in LinksOf(document, step).Where(h => h.StartsWith('#')).Select(h => h[1..]).Where(reached.Add)) open.Enqueue(to);
        }

        Assert.Equal(tree.Nodes.Select(n => n.Key.Value).Order(StringComparer.Ordinal), reached.Order(StringComparer.Ordinal));
    });

    [Theory, MemberData(nameof(All))]
    public void Each_answer_links_to_the_step_it_leads_to(string guide) => Each(guide, (tree, document) =>
        Assert.All(tree.Nodes.Where(n => n.Value is AskNode), node =>
        {
            var links = document.GetElementById(node.Key.Value)!.QuerySelectorAll("a[href^='#']");
            Assert.All(((AskNode)node.Value).Answers, a => Assert.Contains(links, l => l.GetAttribute("href") == "#" + a.Value.Value && l.TextContent.Contains(a.Key.Value, StringComparison.Ordinal)));
            Assert.Equal(node.Value.Ways.Count(), links.Length);
        }));

    [Theory, MemberData(nameof(All))]
    public void Each_last_step_says_what_was_found_or_where_to_go_on(string guide)
    {
        var site = CompiledSite.Of(guide);

        Each(guide, (tree, document) => Assert.All(tree.Nodes.Where(n => !n.Value.Ways.Any()), node =>
        {
            var step = document.GetElementById(node.Key.Value)!;
            var links = LinksOf(document, node.Key.Value);
            if (node.Value is AdviceNode advice) Assert.Contains(advice.Advice.Value, step.TextContent, StringComparison.Ordinal);
            else Assert.Contains(Addresses.Relative(Addresses.Of(tree), Addresses.Of(Target(site.Guide, node.Value))), links);
        }));
    }

    /// <summary>As a reader meets them: every walk to the join is gone along, and every step of the trees that follow is looked at.</summary>
    [Fact]
    public void A_way_into_another_tree_names_the_checks_that_come_again()
    {
        var site = CompiledSite.Of(Guides.Demo);
        var named = 0;

        Each(Guides.Demo, (tree, document) =>
        {
            foreach (var (join, target) in tree.Nodes.Where(n => n.Value is JoinNode).Select(n => (n.Key.Value, (Tree)Target(site.Guide, n.Value))))
            {
                var ahead = new HashSet<string>();
                See(target, new HashSet<Tree>());
                var expected = WalksTo(tree, join).SelectMany(w => w).Select(tree.Find).OfType<DoNode>().Select(d => d.Check.Value).Where(ahead.Contains).Distinct().ToList();
                var links = LinksOf(document, join).Where(h => h.StartsWith("../checks/", StringComparison.Ordinal)).Select(h => h["../checks/".Length..^".html".Length]).ToList();
                Assert.Equal(expected.Order(StringComparer.Ordinal), links.Order(StringComparer.Ordinal));
                named += links.Count;

                void See(Tree from, HashSet<Tree> seen)
                {
                    if (!seen.Add(from)) return;
                    foreach (var node in from.Nodes.Select(n => n.Value))
                    {
                        if (node is DoNode step) ahead.Add(step.Check.Value);
                        if (node is JoinNode) See((Tree)Target(site.Guide, node), seen);
                    }
                }
            }
        });
        Assert.True(named > 10, $"{named} checks named");
    }

    static IEnumerable<string[]> WalksTo(Tree tree, string end)
    {
        var open = new Stack<string[]>([[tree.Start.Value]]);
        while (open.TryPop(out var walk))
        {
            if (walk[^1] == end) yield return walk;
            foreach (var way in tree.Find(walk[^1])!.Ways.Select(w => w.Value.Value).Distinct()) open.Push([.. walk, way]);
        }
    }

    static IGuideEntry Target(GuideContent guide, TreeNode node) => node switch
    {
        FaultNode fault => guide.Faults.Find(fault.Fault.Value)!,
        JoinNode join => guide.Trees.Find(join.Tree.Value)!,
        _ => throw new ArgumentOutOfRangeException(nameof(node)),
    };

    static IEnumerable<string> LinksOf(IDocument document, string step) =>
        document.GetElementById(step)!.QuerySelectorAll("a[href]").Select(a => a.GetAttribute("href")!);

    static void Each(string guide, Action<Tree, IDocument> check)
    {
        var site = CompiledSite.Of(guide);
        Assert.All(site.Guide.Trees.All, tree => check(tree, site.Pages[Addresses.Of(tree)].Document));
    }
}
