using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

public enum TreeFlaw
{
    /// <summary>An answer leads to a node that is not there, or the start is not.</summary>
    Dangling,

    /// <summary>A path comes back to a node; such a tree has no cost.</summary>
    Circular,

    /// <summary>No path leads to the node.</summary>
    Unreachable,

    /// <summary>A check comes again on one path, which tells nothing new.</summary>
    RepeatedCheck,

    /// <summary>A step without an answer ends in nothing.</summary>
    NoAnswers,
}

/// <param name="Flaw">What is wrong.</param>
/// <param name="Node">Where.</param>
/// <param name="Path">Ids of nodes from the start to it; empty for an unreachable node.</param>
public sealed record TreeProblem(TreeFlaw Flaw, string Node, ImmutableArray<string> Path);

/// <summary>Nodes by id, in an order in which every step stands before what it leads to, with the flaws found.</summary>
internal sealed class TreeShape
{
    readonly Dictionary<string, TreeNode> nodes;
    readonly List<TreeProblem> problems = [];
    readonly HashSet<string> finished = new(StringComparer.Ordinal);
    readonly List<TreeNode> backwards = [];

    public TreeShape(SymptomTree tree)
    {
        nodes = tree.Nodes.ToDictionary(n => n.Id, StringComparer.Ordinal);
        Visit(tree.Start, []);
        problems.AddRange(tree.Nodes.Where(n => !finished.Contains(n.Id))
            .Select(n => new TreeProblem(TreeFlaw.Unreachable, n.Id, [])));
    }

    public ImmutableArray<TreeProblem> Problems => [.. problems];

    /// <summary>False when following the answers does not always end in a leaf.</summary>
    public bool CanBeWalked =>
        !problems.Any(p => p.Flaw is TreeFlaw.Dangling or TreeFlaw.Circular or TreeFlaw.NoAnswers);

    public IEnumerable<TreeNode> FromStart => Enumerable.Reverse(backwards);

    /// <summary>Causes that some path from the node ends in; null stands for advice.</summary>
    public Dictionary<string, HashSet<string>> LeavesBelow()
    {
        Dictionary<string, HashSet<string>> below = new(StringComparer.Ordinal);
        foreach (TreeNode node in backwards)
        {
            below[node.Id] = node switch
            {
                TreeLeaf leaf => [leaf.Cause ?? WeightedCause.SomethingElse],
                TreeStep step => [.. step.Branches.SelectMany(b => below[b.Next])],
                _ => [],
            };
        }

        return below;
    }

    void Visit(string id, ImmutableArray<string> path)
    {
        if (path.Contains(id))
        {
            problems.Add(new(TreeFlaw.Circular, id, [.. path, id]));
            return;
        }

        if (!nodes.TryGetValue(id, out TreeNode? node))
        {
            problems.Add(new(TreeFlaw.Dangling, id, [.. path, id]));
            return;
        }

        if (!finished.Add(id))
            return;
        if (node is TreeStep step)
            Follow(step, [.. path, id]);
        backwards.Add(node);
    }

    void Follow(TreeStep step, ImmutableArray<string> path)
    {
        if (step.Branches.IsEmpty)
            problems.Add(new(TreeFlaw.NoAnswers, step.Id, path));
        foreach (TreeBranch branch in step.Branches)
            Visit(branch.Next, path);
    }
}
