using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>Makes plans for split problems: exact for up to 16 causes, else greedy with a look ahead.</summary>
public static class SplitPlans
{
    /// <summary>
    /// Exact where it can be; otherwise by information per cost, with a look ahead where there is time for it. Equal
    /// choices go by id.
    /// </summary>
    public static SplitPlan Best(SplitProblem problem)
    {
        SplitTable table = new(problem);
        return Make(table, MethodFor(table));
    }

    /// <summary>The plan that this method makes, for comparison.</summary>
    /// <exception cref="ArgumentException">The problem is too large to be solved exactly.</exception>
    public static SplitPlan By(SplitProblem problem, SplitMethod method)
    {
        SplitTable table = new(problem);
        return method != SplitMethod.Exact || ExactSplit.Fits(table)
            ? Make(table, method)
            : throw new ArgumentException("Too large for the exact method.", nameof(problem));
    }

    /// <summary>
    /// For each check that tells anything, what the plan costs that starts with it and is then the best. Shows an
    /// author which first step saves most; cheapest first.
    /// </summary>
    public static ImmutableArray<(string Check, double Cost)> FirstSteps(SplitProblem problem)
    {
        SplitTable table = new(problem);
        int[] all = [.. Enumerable.Range(0, table.Causes)];
        IChooser chooser = Chooser(table, MethodFor(table));
        return
        [
            .. Enumerable.Range(0, table.Checks).Where(check => table.Split(check, all).Count > 1)
                .Select(check => (table.CheckId(check), Cost: new PlanBuilder(table, chooser).StartingWith(check).Cost))
                .OrderBy(first => Math.Round(first.Cost, 9)).ThenBy(first => first.Item1, StringComparer.Ordinal),
        ];
    }

    static SplitMethod MethodFor(SplitTable table)
    {
        if (ExactSplit.Fits(table))
            return SplitMethod.Exact;
        return LookAheadSplit.CandidatesFor(table) > 1 ? SplitMethod.LookAhead : SplitMethod.Greedy;
    }

    static SplitPlan Make(SplitTable table, SplitMethod method) =>
        new PlanBuilder(table, Chooser(table, method)).Build(method);

    static IChooser Chooser(SplitTable table, SplitMethod method) => method switch
    {
        SplitMethod.Exact => new ExactSplit(table),
        SplitMethod.Greedy => new GreedySplit(table),
        _ => new LookAheadSplit(table, LookAheadSplit.CandidatesFor(table)),
    };
}
