using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>A tree can be walked: every way leads to a step, every step is reached, no walk goes round, every outcome is covered.</summary>
sealed class TreeInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) =>
    [
        .. guide.Trees.All.SelectMany(t => Inspect(guide, t)),
        .. JoinCircles(guide),
    ];

    static IEnumerable<Finding> Inspect(GuideContent guide, Tree tree) =>
        [.. Dangling(tree), .. Unreachable(tree), .. Circular(tree), .. Uncovered(guide, tree)];

    static IEnumerable<Finding> Dangling(Tree tree)
    {
        var names = tree.Nodes.Select(n => n.Key.Value).ToHashSet(StringComparer.Ordinal);
        var ways = tree.Nodes.SelectMany(n => n.Value.Ways).Prepend(new(tree.Start.With("start"), tree.Start));
        return
            from way in ways
            where !names.Contains(way.Value.Value)
            select Rules.TreeDangling.At(way.Value.Span, way.Key.Value, way.Value.Value, NearestName.Question(way.Value.Value, names));
    }

    static IEnumerable<Finding> Unreachable(Tree tree)
    {
        var reached = Circles.ReachableFrom(tree.Start.Value, name => Next(tree, name));
        return
            from n in tree.Nodes
            where !reached.Contains(n.Key.Value)
            select Rules.TreeUnreachable.At(n.Key.Span, n.Key.Value);
    }

    static IEnumerable<Finding> Circular(Tree tree)
    {
        if (Circles.FirstFrom([tree.Start.Value], name => Next(tree, name)) is not { } circle) return [];
        var at = tree.Nodes.First(n => n.Key.Value == circle[0]).Key.Span;
        return [Rules.TreeCircular.At(at, string.Join(" > ", circle))];
    }

    static IEnumerable<Finding> Uncovered(GuideContent guide, Tree tree)
    {
        foreach (var (name, node) in tree.Nodes)
        {
            if (node is not DoNode step || guide.Checks.Find(step.Check.Value) is not { } check) continue;
            var outcomes = check.Outcomes.Select(o => o.Key.Value).ToList();
            var covered = step.Answers.Select(a => a.Key).ToList();
            foreach (var key in covered.Where(k => !outcomes.Contains(k.Value)))
            {
                yield return Rules.OutcomeUnknown.At(key.Span, step.Check.Value, key.Value, NearestName.Question(key.Value, outcomes));
            }

            foreach (var outcome in outcomes.Where(o => covered.All(k => k.Value != o)))
            {
                yield return Rules.TreeOutcomeUncovered.At(step.Check.Span, name.Value, outcome, step.Check.Value).Concerning(outcome);
            }
        }
    }

    static IEnumerable<Finding> JoinCircles(GuideContent guide)
    {
        var slugs = guide.Trees.All.Select(t => t.Origin.Slug);
        if (Circles.FirstFrom(slugs, Joined) is not { } circle) return [];
        var first = guide.Trees.Find(circle[0])!;
        return [Rules.TreeJoinCircular.At(first.Name.Span, string.Join(" > ", circle))];

        IEnumerable<string> Joined(string slug) =>
            guide.Trees.Find(slug)?.Nodes.Select(n => n.Value).OfType<JoinNode>().Select(j => j.Tree.Value) ?? [];
    }

    static IEnumerable<string> Next(Tree tree, string name) => tree.Find(name)?.Ways.Select(w => w.Value.Value) ?? [];
}
