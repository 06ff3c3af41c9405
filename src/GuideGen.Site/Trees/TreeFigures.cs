using System.Collections.Concurrent;
using System.Collections.Immutable;
using GuideGen.Diagnosis.Trees;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Trees;

/// <summary>What a walk through a tree takes, as exactly as its page says it.</summary>
/// <param name="Variant">Slug of the variant.</param>
/// <param name="Expected">On average, in minutes.</param>
/// <param name="Worst">At most, in minutes.</param>
/// <param name="Money">At most, in the guide's currency.</param>
/// <param name="Found">Of ten times, how often the walk ends at the fault.</param>
public readonly record struct TreeFigure(string Variant, double Expected, double Worst, decimal Money, double Found);

/// <summary>The figures of the trees of a guide, worked out when somebody asks.</summary>
public sealed class TreeFigures(GuideContent guide, GuideWeights weights)
{
    readonly TreeEvidences evidences = new(guide, weights);
    readonly ConcurrentDictionary<string, ImmutableArray<TreeFigure>> known = new(StringComparer.Ordinal);

    /// <summary>A line for each variant that the tree is about and that can have the symptom.</summary>
    public ImmutableArray<TreeFigure> Of(Tree tree) =>
        known.GetOrAdd(tree.Origin.Slug, _ => [.. evidences.CostsOf(tree).Select(c => FigureOf(c.Variant, c.Cost))]);

    /// <summary>Of all that the figures of any tree follow from.</summary>
    internal Digest Origin()
    {
        using var all = new Digester();
        all.Add(weights.Origin);
        foreach (var tree in guide.Trees.All) all.Add(tree.Origin.Face);
        return all.Take();
    }

    static TreeFigure FigureOf(string variant, TreeCost cost) => new(
        variant, Math.Round(cost.Expected.Minutes), Math.Round(cost.Worst.Minutes), Math.Ceiling((decimal)cost.Worst.Money), Math.Round(10 * cost.Coverage));
}
