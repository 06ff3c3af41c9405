using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>What trees find together: they do not lead to each other for ever, and no likely fault of a symptom is missed.</summary>
sealed class JoinedTreesInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => [.. Circles(guide), .. MissedFaults(guide)];

    static IEnumerable<Finding> Circles(GuideContent guide)
    {
        var slugs = guide.Trees.All.Select(t => t.Origin.Slug);
        if (Walks.FirstCircle(slugs, s => Joined(guide, s)) is not { } circle) return [];
        var first = guide.Trees.Find(circle[0])!;
        return [Rules.TreeJoinCircular.At(first.Name.Span, string.Join(" > ", circle))];
    }

    static IEnumerable<Finding> MissedFaults(GuideContent guide)
    {
        var found = guide.Trees.All.ToDictionary(t => t, t => FaultsFound(guide, t));
        var ofSymptom = guide.Trees.All.ToLookup(t => t.Symptom.Value, StringComparer.Ordinal);
        return
            from fault in guide.Faults.All
            from symptom in fault.Symptoms
            where symptom.Value.Value.Value > Likelihood.Words["rarely"]
            let trees = ofSymptom[symptom.Key.Value].Where(t => ShareVariant(t, fault)).ToList()
            where trees.Count > 0 && trees.All(t => found[t]?.Contains(fault.Origin.Slug) == false)
            select Missed(trees[0], fault, symptom.Key.Value).Resting([.. trees.Select(t => t.Origin.Source.Path), fault.Origin.Source.Path]);
    }

    static Finding Missed(Tree tree, Fault fault, string symptom)
    {
        var (slug, path) = (fault.Origin.Slug, fault.Origin.Source.Path);
        return Rules.TreeFaultMissed.At(tree.Symptom.Span, slug, symptom, WayTo(tree, fault), path).Concerning(slug) with { AlsoOn = (path, symptom) };
    }

    static string WayTo(Tree tree, Fault fault)
    {
        var slug = fault.Origin.Slug;
        if (tree.Computed is not null) return $"Add '{slug}' to 'faults' of {tree.Origin.Source.Path}, and a check whose outcomes tell it apart.";
        var confirming = tree.Nodes.FirstOrDefault(n => n.Value is DoNode step && fault.Checks.Any(c => c.Value == step.Check.Value)).Key.Value;
        var step = confirming is null ? "an answer or outcome of a step" : $"an outcome of the step '{confirming}', which makes its check,";
        return $"In {tree.Origin.Source.Path} add the step '{slug}: {{ fault: {slug} }}' under 'nodes', and lead {step} to '{slug}'.";
    }

    /// <returns>Null if a joined tree or a fault is not known or a tree not built yet, so that nobody can say.</returns>
    static HashSet<string>? FaultsFound(GuideContent guide, Tree tree)
    {
        var reached = Walks.ReachableFrom(tree.Origin.Slug, s => Joined(guide, s)).Select(guide.Trees.Find).ToList();
        if (reached.Any(t => t is null or { IsUnbuilt: true })) return null;
        var faults = reached.SelectMany(t => t!.Nodes).SelectMany(n => Named(n.Value)).ToHashSet(StringComparer.Ordinal);
        return faults.IsSubsetOf(guide.Slugs[ContentKind.Fault]) ? faults : null;
    }

    static IEnumerable<string> Named(TreeNode node) => node switch
    {
        FaultNode leaf => [leaf.Fault.Value],
        AdviceNode advice => advice.Left.Select(f => f.Value),
        _ => [],
    };

    static bool ShareVariant(Tree tree, Fault fault) =>
        tree.Variants.IsEmpty || fault.Variants.IsEmpty || tree.Variants.Any(v => fault.Variants.Any(w => w.Value == v.Value));

    static IEnumerable<string> Joined(GuideContent guide, string slug) =>
        guide.Trees.Find(slug)?.Nodes.Select(n => n.Value).OfType<JoinNode>().Select(j => j.Tree.Value) ?? [];
}
