using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>What a tree ends in fits the symptom it begins with.</summary>
sealed class TreeLeavesInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Trees.All.SelectMany(t => Inspect(guide, t));

    static IEnumerable<Finding> Inspect(GuideContent guide, Tree tree)
    {
        var paths = new TreePaths(tree);
        var symptom = guide.Symptoms.Find(tree.Symptom.Value);
        foreach (var (name, node) in tree.Nodes)
        {
            if (node is FaultNode leaf && guide.Faults.Find(leaf.Fault.Value) is { } fault && Lacks(guide, fault, tree))
            {
                yield return Rules.TreeLeafSymptom.At(leaf.Fault.Span, leaf.Fault.Value, tree.Symptom.Value, paths.To(name.Value)).Concerning(leaf.Fault.Value)
                    .Resting(tree.Origin.Source.Path, fault.Origin.Source.Path);
            }

            if (symptom is { Drive.Value: DriveAdvice.StopNow } && node is AdviceNode { Drive: { Value: not DriveAdvice.StopNow } drive })
            {
                yield return Rules.TreeDriveOn.At(drive.Span, tree.Symptom.Value, name.Value, paths.To(name.Value)).Concerning(name.Value)
                    .Resting(tree.Origin.Source.Path, symptom.Origin.Source.Path);
            }
        }
    }

    static bool Lacks(GuideContent guide, Fault fault, Tree tree) =>
        guide.Slugs[ContentKind.Symptom].Contains(tree.Symptom.Value) && fault.Symptoms.All(s => s.Key.Value != tree.Symptom.Value);
}
