using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Trees;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;
using TreeNode = GuideGen.Diagnosis.Trees.TreeNode;

namespace GuideGen.Site.Trees;

/// <summary>A tree in numbers, with the trees that it joins put in. A node is called by its tree and its name.</summary>
/// <param name="guide">The guide, without errors.</param>
/// <param name="weights">Of the same guide.</param>
/// <param name="variant">Questions for the variant are answered for this one; null leaves them open.</param>
sealed class JoinedTree(GuideContent guide, GuideWeights weights, string? variant)
{
    /// <summary>The answer of somebody who cannot tell; it can be no outcome of a check.</summary>
    public const string CannotTell = "cannot-tell";

    /// <summary>False for the figures of the checks alone.</summary>
    public bool QuestionsTakeTime { get; init; } = true;

    public static string NameOf(Tree tree, string step) => $"{tree.Origin.Slug}/{step}";

    public SymptomTree Of(Tree tree)
    {
        return new SymptomTree(
            NameOf(tree, tree.Start.Value),
            [.. from t in WithJoined(guide.Trees, tree) from n in t.Nodes where n.Value is not JoinNode select Node(t, n.Key.Value, n.Value)],
            weights.Fitted.Setups);
    }

    /// <summary>The tree, those that it joins, and those that these join.</summary>
    /// <param name="all">Of the guide, without errors.</param>
    public static IReadOnlyList<Tree> WithJoined(Shelf<Tree> all, Tree tree)
    {
        var trees = new List<Tree> { tree };
        for (var i = 0; i < trees.Count; i++)
        {
            var joined = trees[i].Nodes.Select(n => n.Value).OfType<JoinNode>().Select(j => all.Find(j.Tree.Value)!);
            trees.AddRange(joined.Where(t => !trees.Contains(t)).Distinct().ToList());
        }

        return trees;
    }

    TreeNode Node(Tree tree, string name, Guide.Model.TreeNode node) => node switch
    {
        FaultNode leaf => new TreeLeaf(NameOf(tree, name), leaf.Fault.Value),
        BranchNode branch => Step(tree, name, branch),
        _ => new TreeLeaf(NameOf(tree, name), null),
    };

    TreeStep Step(Tree tree, string name, BranchNode branch)
    {
        var check = branch is DoNode step ? guide.Checks.Find(step.Check.Value) : null;
        return new TreeStep(
            NameOf(tree, name),
            check?.Origin.Slug,
            check is null && !QuestionsTakeTime ? default : new Effort(branch.Needs.MinutesOf(check), branch.Needs.MoneyOf(check)),
            [.. branch.Needs.SetupOf(check).Select(s => s.Value)],
            [.. Branches(tree, branch)]);
    }

    IEnumerable<TreeBranch> Branches(Tree tree, BranchNode branch)
    {
        var known = variant is not null && branch is AskNode ask ? VariantAnswers.Of(guide.Vehicle, tree, ask) : null;
        for (var i = 0; i < branch.Answers.Length; i++)
        {
            if (known is { } named && !named[i].Contains(variant!)) continue;
            var (answer, to) = branch.Answers[i];
            yield return new TreeBranch(answer.Value, Target(tree, to.Value), Chances(branch, answer.Value));
        }

        // Nobody knows how many owners cannot tell: the figures are for one who can.
        if (branch.CannotTell is { } way) yield return new TreeBranch(CannotTell, Target(tree, way.Value), weights.NoChance);
    }

    string Target(Tree tree, string step)
    {
        while (tree.Find(step) is JoinNode join)
        {
            tree = guide.Trees.Find(join.Tree.Value)!;
            step = tree.Start.Value;
        }

        return NameOf(tree, step);
    }

    CauseChances? Chances(BranchNode branch, string answer) => branch is DoNode step ? weights.Chances(step.Check.Value, answer) : null;
}
