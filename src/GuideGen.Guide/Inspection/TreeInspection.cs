using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>A tree can be walked: every way leads to a step, every step is reached, no walk goes round or on and on, every outcome is covered.</summary>
sealed class TreeInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Trees.All.Where(t => !t.IsUnbuilt).SelectMany(t => Inspect(guide, t));

    static IEnumerable<Finding> Inspect(GuideContent guide, Tree tree) =>
        [.. Dangling(tree), .. Unreachable(tree), .. Endless(tree), .. Uncovered(guide, tree)];

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
        if (tree.Find(tree.Start.Value) is null) return [];
        var reached = Walks.ReachableFrom(tree.Start.Value, name => Next(tree, name));
        return
            from n in tree.Nodes
            where !reached.Contains(n.Key.Value)
            select Rules.TreeUnreachable.At(n.Key.Span, n.Key.Value);
    }

    static IEnumerable<Finding> Endless(Tree tree)
    {
        var circle = Walks.FirstCircle([tree.Start.Value], name => Next(tree, name));
        return circle is null ? Deep(tree) : [Rules.TreeCircular.At(PlaceOf(tree, circle[0]), string.Join(" > ", circle))];
    }

    static IEnumerable<Finding> Deep(Tree tree)
    {
        var (name, steps) = Walks.LongestFrom(tree.Start.Value, name => Next(tree, name)).OrderByDescending(n => n.Value).ThenBy(n => n.Key, StringComparer.Ordinal).First();
        return steps <= GuideLimits.StepsOfWalk || tree.Find(name) is null
            ? []
            : [Rules.TreeDeep.At(PlaceOf(tree, name), name, $"{steps}", $"{GuideLimits.StepsOfWalk}")];
    }

    static SourceSpan PlaceOf(Tree tree, string name) => tree.Nodes.First(n => n.Key.Value == name).Key.Span;

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

    static IEnumerable<string> Next(Tree tree, string name) => tree.Find(name)?.Ways.Select(w => w.Value.Value) ?? [];
}
