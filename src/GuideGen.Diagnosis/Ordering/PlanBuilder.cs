using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>Follows a chooser from all causes to the leaves and sums what that takes.</summary>
internal sealed class PlanBuilder(SplitTable table, IChooser chooser)
{
    readonly List<ImmutableArray<string>> inseparable = [];
    Effort expected, worst;

    public SplitPlan Build(SplitMethod method) => Report(Node(All, 0, Effort.None), method);

    /// <summary>The plan with this check first, whatever the chooser would take.</summary>
    public (PlanNode Root, double Cost) StartingWith(int check)
    {
        PlanNode root = Step(check, All, 0, Effort.None);
        return (root, table.Scaled(expected));
    }

    int[] All => [.. Enumerable.Range(0, table.Causes)];

    SplitPlan Report(PlanNode root, SplitMethod method) => new(
        root,
        table.Scaled(expected),
        expected,
        worst,
        method,
        [.. inseparable.OrderBy(g => g[0], StringComparer.Ordinal)]);

    PlanNode Node(int[] causes, long done, Effort soFar)
    {
        int check = causes.Length > 1 ? chooser.Choose(causes, done) : -1;
        return check < 0 ? Leaf(causes, soFar) : Step(check, causes, done, soFar);
    }

    PlanStep Step(int check, int[] causes, long done, Effort soFar)
    {
        Effort effort = soFar + table.EffortOf(check, done);
        return new(table.CheckId(check),
        [
            .. table.Split(check, causes).Select(part => new PlanBranch(
                table.OutcomeId(check, table.Outcome[check][part[0]]),
                Node(part, done | table.Needs[check], effort))),
        ]);
    }

    PlanLeaf Leaf(int[] causes, Effort soFar)
    {
        expected += causes.Sum(c => table.Probability[c]) * soFar;
        worst = new(Math.Max(worst.Minutes, soFar.Minutes), Math.Max(worst.Money, soFar.Money));
        ImmutableArray<string> ids = [.. causes.Select(c => table.CauseIds[c])];
        if (ids.Length > 1)
            inseparable.Add(ids);
        return new(ids);
    }
}
