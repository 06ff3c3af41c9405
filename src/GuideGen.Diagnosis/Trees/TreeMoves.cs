using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

/// <param name="Check">Node of the check that goes forward.</param>
/// <param name="Before">Node of the check that it now comes before.</param>
/// <param name="Tree">The tree with the two exchanged.</param>
/// <param name="Cost">What that tree costs.</param>
public sealed record TreeMove(string Check, string Before, SymptomTree Tree, TreeCost Cost);

/// <summary>Trees with the same steps in another order.</summary>
public static class TreeMoves
{
    // Fewer minutes than this on average are not worth a change.
    const double WorthSaving = 0.05;

    /// <summary>The one move that saves most, or null where none saves anything.</summary>
    /// <param name="tree">A tree that can be walked.</param>
    /// <param name="onward">The answer, by step, after which the walk goes on as if nothing was found.</param>
    /// <param name="mayGoFirst">False keeps the first node from coming before the second, for the sake of safety.</param>
    /// <param name="aim">The causes with their probabilities, and what is made small.</param>
    public static TreeMove? Best(
        SymptomTree tree,
        string onward,
        Func<string, string, bool> mayGoFirst,
        (ImmutableArray<WeightedCause> Causes, CostScale Scale) aim)
    {
        TreeCost? now = TreeCost.Of(tree, aim.Causes, out _);
        if (now is null)
            return null;
        TreeMove? best = null;
        double least = aim.Scale.Of(now.Expected) - WorthSaving;
        foreach ((SymptomTree moved, string check, string before) in All(tree, onward))
        {
            if (!mayGoFirst(check, before) || TreeCost.Of(moved, aim.Causes, out _) is not { } cost)
                continue;
            if (cost.Coverage < now.Coverage - 1e-9 || aim.Scale.Of(cost.Expected) >= least)
                continue;
            least = aim.Scale.Of(cost.Expected);
            best = new(check, before, moved, cost);
        }

        return best;
    }

    /// <summary>Best moves one after the other until none saves anything.</summary>
    public static ImmutableArray<TreeMove> Series(
        SymptomTree tree,
        string onward,
        Func<string, string, bool> mayGoFirst,
        (ImmutableArray<WeightedCause> Causes, CostScale Scale) aim)
    {
        var moves = ImmutableArray.CreateBuilder<TreeMove>();
        for (TreeMove? next = Best(tree, onward, mayGoFirst, aim); next is not null && moves.Count < tree.Nodes.Length; next = Best(next.Tree, onward, mayGoFirst, aim))
            moves.Add(next);
        return moves.ToImmutable();
    }

    /// <summary>
    /// Two checks can change places where the second follows when the first finds nothing, and nothing else leads to it.
    /// </summary>
    static IEnumerable<(SymptomTree Tree, string Check, string Before)> All(SymptomTree tree, string onward)
    {
        Dictionary<string, TreeNode> nodes = tree.Nodes.ToDictionary(n => n.Id, StringComparer.Ordinal);
        ILookup<string, string> before = tree.Nodes.OfType<TreeStep>()
            .SelectMany(s => s.Branches.Select(b => (b.Next, s.Id))).Distinct().ToLookup(w => w.Next, w => w.Id);
        foreach (TreeStep first in tree.Nodes.OfType<TreeStep>().Where(s => s.Check is not null))
        {
            if (Onward(first, onward) is not { } next || nodes[next] is not TreeStep { Check: not null } second)
                continue;
            if (before[next].Count() == 1 && tree.Start != next && Onward(second, onward) is { } after)
                yield return (Exchange(tree, first, second, after), second.Id, first.Id);
        }
    }

    static string? Onward(TreeStep step, string onward) => step.Branches.FirstOrDefault(b => b.Answer == onward)?.Next;

    static SymptomTree Exchange(SymptomTree tree, TreeStep first, TreeStep second, string after)
    {
        TreeNode Moved(TreeNode node) => node switch
        {
            TreeStep step when step.Id == first.Id => Lead(step, second.Id, after),
            TreeStep step when step.Id == second.Id => Lead(step, after, first.Id),
            TreeStep step => Lead(step, first.Id, second.Id),
            _ => node,
        };
        return new(tree.Start == first.Id ? second.Id : tree.Start, [.. tree.Nodes.Select(Moved)], tree.Setups);
    }

    static TreeStep Lead(TreeStep step, string from, string to) => step with
    {
        Branches = [.. step.Branches.Select(b => b.Next == from ? b with { Next = to } : b)],
    };
}
