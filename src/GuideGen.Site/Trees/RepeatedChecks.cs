using GuideGen.Guide.Model;

namespace GuideGen.Site.Trees;

/// <summary>Checks that somebody who goes on to another tree may have made already.</summary>
static class RepeatedChecks
{
    /// <param name="all">The trees of a guide without errors.</param>
    /// <param name="tree">One of them.</param>
    /// <param name="join">The name of a step of it that leads to another tree.</param>
    /// <returns>Slugs of the checks that stand on some walk to the step and in the tree that follows, or in those that it joins; as this tree has them.</returns>
    public static IEnumerable<string> At(Shelf<Tree> all, Tree tree, string join)
    {
        var ahead = JoinedTree.WithJoined(all, all.Find(((JoinNode)tree.Find(join)!).Tree.Value)!).SelectMany(ChecksOf).Select(c => c.Check).ToHashSet(StringComparer.Ordinal);
        var before = Before(tree, join);
        return ChecksOf(tree).Where(c => before.Contains(c.Step) && ahead.Contains(c.Check)).Select(c => c.Check).Distinct();
    }

    static IEnumerable<(string Step, string Check)> ChecksOf(Tree tree) => from n in tree.Nodes where n.Value is DoNode select (n.Key.Value, ((DoNode)n.Value).Check.Value);

    /// <summary>The steps that a walk to this one can come through.</summary>
    static HashSet<string> Before(Tree tree, string name)
    {
        var before = new HashSet<string>(StringComparer.Ordinal) { name };
        while (true)
        {
            var count = before.Count;
            before.UnionWith(from n in tree.Nodes where n.Value.Ways.Any(w => before.Contains(w.Value.Value)) select n.Key.Value);
            if (before.Count == count) return before;
        }
    }
}
