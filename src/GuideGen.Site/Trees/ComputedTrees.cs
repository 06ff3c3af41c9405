using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Trees;

/// <summary>Builds the trees that ask for it, from their checks, questions and faults.</summary>
public static class ComputedTrees
{
    /// <param name="guide">Without errors.</param>
    /// <param name="weights">Of the same guide: they do not depend on the trees.</param>
    public static GuideContent Fill(GuideContent guide, GuideWeights weights)
    {
        if (!guide.Trees.All.Any(t => t.IsUnbuilt)) return guide;
        return guide with { Trees = new Shelf<Tree>(guide.Trees.All.Select(t => t.IsUnbuilt ? Build(guide, weights, t) : t)) };
    }

    /// <summary>Of all that the filled trees follow from. It is less than the frame: what a fault is called, or what it costs, builds no tree anew.</summary>
    public static Digest BasisOf(GuideContent guide, GuideWeights weights)
    {
        using var basis = new Digester();
        basis.Add(weights.Origin);
        foreach (var tree in guide.Trees.All) basis.Add(tree.Origin.Face);
        return basis.Take();
    }

    /// <summary>The tree with its steps, and by which method they were ordered: the least exact, if there are several.</summary>
    internal static Tree Build(GuideContent guide, GuideWeights weights, Tree tree)
    {
        var order = tree.Computed!;
        var builder = new TreeBuilder(order);
        var variants = guide.Vehicle.Variants.Where(v => tree.Variants.IsEmpty || tree.Variants.Any(t => t.Value == v.Key.Value)).ToList();
        var apart = order.AskVariant is not null && variants.Count > 1;
        var parts = apart ? variants.Select(v => (string?)v.Key.Value).ToList() : [variants is [var only] ? only.Key.Value : null];
        var plans = parts.ConvertAll(v => PlanOf(Split(guide, weights, tree, v)));
        var starts = plans.ConvertAll(p => builder.Add(p.Split, p.Plan.Root, apart ? 1 : 0));
        var start = apart ? builder.AddQuestion(order.AskVariant!.Value, variants.Zip(starts, (v, s) => KeyValuePair.Create(v.Value.Name.Value, s))) : starts[0];
        return tree with
        {
            Start = new Located<string>(start, order.Place),
            Nodes = builder.Nodes,
            Computed = order with { Method = MethodOf(plans.Max(p => p.Plan.Method)) },
        };
    }

    static (FaultSplit Split, SplitPlan Plan) PlanOf(FaultSplit split) => (split, SplitPlans.Best(split.Problem));

    static FaultSplit Split(GuideContent guide, GuideWeights weights, Tree tree, string? variant)
    {
        var causes = CausesOf(weights, tree, variant);
        var faults = causes.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var order = tree.Computed!;
        var missing = order.Without.Select(t => t.Value).ToHashSet(StringComparer.Ordinal);
        var named = order.Checks.Select(c => c.Value).ToHashSet(StringComparer.Ordinal);
        var checks = guide.Checks.All.Where(c =>
            (named.Count > 0 ? named.Contains(c.Origin.Slug) : c.Outcomes.Any(o => o.Value.PointsTo.Any(f => faults.Contains(f.Value))))
            && (variant is null || GuideWeights.Fits(c, variant))
            && !c.Tools.Any(t => missing.Contains(t.Value)));
        return new FaultSplit(
            guide, weights, causes, [.. order.Questions.Select(q => Candidate.Of(q.Key.Value, q.Value, weights)), .. checks.Select(c => Candidate.Of(c, weights))]);
    }

    /// <summary>The faults that the tree is to tell apart; all others are something else to it.</summary>
    static List<WeightedCause> CausesOf(GuideWeights weights, Tree tree, string? variant)
    {
        var all = weights.CausesOf(tree.Symptom.Value, variant);
        var named = tree.Computed!.Faults.Select(f => f.Value).ToHashSet(StringComparer.Ordinal);
        var kept = all.Where(c => c.Id != WeightedCause.SomethingElse && (named.Count == 0 || named.Contains(c.Id))).ToList();
        return [.. kept, new WeightedCause(WeightedCause.SomethingElse, Math.Max(0, 1 - kept.Sum(c => c.Probability)))];
    }

    static string MethodOf(SplitMethod method) => method == SplitMethod.Exact ? "exact" : "greedy";
}
