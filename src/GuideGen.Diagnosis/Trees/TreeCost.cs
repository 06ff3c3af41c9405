using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

/// <summary>What a tree means for one cause.</summary>
/// <param name="Id">The cause.</param>
/// <param name="Expected">Average effort until a leaf, when this is the cause.</param>
/// <param name="Found">Share of such vehicles that end at this cause's leaf.</param>
/// <param name="Wrong">Share that ends at another cause.</param>
/// <param name="NoAnswer">Share that ends in advice.</param>
/// <param name="Assumed">True where a branch had to be guessed because the tree states no chance for this cause.</param>
public sealed record CauseWalk(
    string Id, Effort Expected, double Found, double Wrong, double NoAnswer, bool Assumed);

/// <summary>What it takes to walk a tree, averaged over causes by their probabilities.</summary>
/// <param name="Expected">Average effort until a leaf.</param>
/// <param name="Worst">
/// The most minutes and the most money that any possible path takes; the two may belong to different paths.
/// </param>
/// <param name="Coverage">Probability that the walk ends at the true cause.</param>
/// <param name="WrongLeaf">Probability that it ends at another.</param>
/// <param name="NoAnswer">Probability that it ends in advice.</param>
/// <param name="Deepest">The most steps on any possible path.</param>
/// <param name="Causes">In the order given.</param>
/// <param name="Problems">Flaws that do not keep the tree from being walked.</param>
public sealed record TreeCost(
    Effort Expected,
    Effort Worst,
    double Coverage,
    double WrongLeaf,
    double NoAnswer,
    int Deepest,
    ImmutableArray<CauseWalk> Causes,
    ImmutableArray<TreeProblem> Problems)
{
    /// <summary>
    /// Walks every cause through the tree. Where a step states no chance for a cause, the cause takes the branches
    /// from which its own leaf can be reached (something else: those that reach advice), in equal parts, and any
    /// branch where there is none.
    /// </summary>
    /// <param name="tree">The tree.</param>
    /// <param name="causes">Probabilities; scaled to sum to 1.</param>
    /// <param name="problems">All flaws found.</param>
    /// <returns>Null for a tree that cannot be walked: something dangles, circles or has no answer.</returns>
    public static TreeCost? Of(
        SymptomTree tree, ImmutableArray<WeightedCause> causes, out ImmutableArray<TreeProblem> problems)
    {
        TreeShape shape = new(tree);
        problems = shape.Problems;
        if (!shape.CanBeWalked || causes.IsEmpty)
            return null;
        TreeWalk walk = new(tree, shape, causes);
        walk.Run();
        problems = [.. problems, .. walk.Repeats];
        return Report(walk, causes, problems);
    }

    static TreeCost Report(TreeWalk walk, ImmutableArray<WeightedCause> causes, ImmutableArray<TreeProblem> problems)
    {
        ImmutableArray<CauseWalk> walks = [.. causes.Select((c, i) => walk.Of(i))];
        double sum = causes.Sum(c => c.Probability);
        double Mean(Func<CauseWalk, double> value) =>
            walks.Zip(causes, (w, c) => c.Probability / sum * value(w)).Sum();
        return new(
            new(Mean(w => w.Expected.Minutes), Mean(w => w.Expected.Money)),
            walk.Worst,
            Mean(w => w.Found),
            Mean(w => w.Wrong),
            Mean(w => w.NoAnswer),
            walk.Deepest,
            walks,
            problems);
    }
}
