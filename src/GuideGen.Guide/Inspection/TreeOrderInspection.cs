using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>No check is made twice on a walk, and none with a grave hazard stands before a cheaper one without.</summary>
sealed class TreeOrderInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Trees.All.SelectMany(t => Inspect(guide, t));

    static IEnumerable<Finding> Inspect(GuideContent guide, Tree tree)
    {
        var paths = new TreePaths(tree);
        return Walks.FirstCircle([tree.Start.Value], paths.Next) is null ? [.. Repeated(tree, paths), .. GraveFirst(guide, tree, paths)] : [];
    }

    static IEnumerable<Finding> Repeated(Tree tree, TreePaths paths)
    {
        foreach (var again in Checks(tree))
        {
            var before = Checks(tree).FirstOrDefault(b => b.Step.Check.Value == again.Step.Check.Value && paths.After(b.Name).Contains(again.Name));
            if (before.Step is null) continue;
            var path = paths.To(before.Name) + paths.Between(before.Name, again.Name)[before.Name.Length..];
            yield return Rules.TreeCheckRepeated.At(again.Step.Check.Span, again.Step.Check.Value, path).Concerning(again.Step.Check.Value);
        }
    }

    /// <summary>
    /// The check that is made when a step cannot be told does not need its outcome. So it could as well come first, and
    /// should if nobody can be badly hurt by it and it takes less time. A check that is also come to without the step
    /// serves other walks; there the step stands first since something spoke for it.
    /// </summary>
    static IEnumerable<Finding> GraveFirst(GuideContent guide, Tree tree, TreePaths paths)
    {
        foreach (var (name, step) in Checks(tree))
        {
            if (GraveHazard(guide, step) is not { } hazard || step.CannotTell is not { } way) continue;
            var minutes = Minutes(guide, step);
            var safer = paths.NextChecks(way.Value).FirstOrDefault(s =>
                GraveHazard(guide, s.Step) is null && Minutes(guide, s.Step) < minutes && !paths.Avoiding(name).Contains(s.Name));
            if (safer.Step is null) continue;
            yield return Rules.TreeGraveFirst.At(step.Check.Span, hazard, step.Check.Value, safer.Step.Check.Value, paths.To(name)).Concerning(step.Check.Value)
                .Resting([tree.Origin.Source.Path, .. new[] { step, safer.Step }.Select(s => guide.Checks.Find(s.Check.Value)?.Origin.Source.Path).OfType<string>()]);
        }
    }

    static IEnumerable<(string Name, DoNode Step)> Checks(Tree tree) =>
        from n in tree.Nodes
        where n.Value is DoNode
        select (n.Key.Value, (DoNode)n.Value);

    static string? GraveHazard(GuideContent guide, DoNode step) => guide.Checks.Find(step.Check.Value) is { } check
        ? TreeHazards.Of(guide.Vehicle, step, check).FirstOrDefault(h => guide.Hazards.TryGetValue(h, out var hazard) && hazard.IsGrave)
        : null;

    static double? Minutes(GuideContent guide, DoNode step) => guide.Checks.Find(step.Check.Value) is { } check
        ? step.Needs.MinutesOf(check) + step.Needs.SetupOf(check).Sum(s => guide.Vehicle.Setups.FirstOrDefault(v => v.Key.Value == s.Value).Value?.Minutes.Value ?? 0)
        : null;
}
