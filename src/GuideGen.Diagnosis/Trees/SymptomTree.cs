using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

public abstract record TreeNode(string Id);

/// <summary>A question or a check.</summary>
/// <param name="Id">The node.</param>
/// <param name="Check">Id of the check; null for a question. A check done earlier on the path costs nothing again.</param>
/// <param name="Effort">What it takes, preparations not included.</param>
/// <param name="Setups">Preparations it needs; each is made once on a path.</param>
/// <param name="Branches">Where its answers lead.</param>
public sealed record TreeStep(
    string Id, string? Check, Effort Effort, ImmutableArray<string> Setups, ImmutableArray<TreeBranch> Branches)
    : TreeNode(Id);

/// <summary>The end of a path: a cause, or advice with <paramref name="Cause"/> null.</summary>
public sealed record TreeLeaf(string Id, string? Cause) : TreeNode(Id);

/// <param name="Answer">Its words, or the outcome's id; unique within the step.</param>
/// <param name="Next">Id of the node it leads to.</param>
/// <param name="Chances">How likely a vehicle takes this branch, by its cause; null where nothing is stated.</param>
public sealed record TreeBranch(string Answer, string Next, CauseChances? Chances = null);

/// <summary>A row of likelihoods and the place of each cause in it; many rows share the places.</summary>
public sealed record CauseChances(IReadOnlyDictionary<string, int> Places, LikelihoodRow Row)
{
    /// <summary>Null for a cause that has no place.</summary>
    public double? Of(string cause) => Places.TryGetValue(cause, out int place) ? Row[place] : null;
}

/// <summary>An authored walk from a symptom to a cause, trees that it joins already put in.</summary>
public sealed record SymptomTree(string Start, ImmutableArray<TreeNode> Nodes, ImmutableArray<Setup> Setups);
