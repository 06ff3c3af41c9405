namespace GuideGen.Diagnosis.Ordering;

/// <summary>
/// Tries the best few checks by information per cost, each followed by greedy to the end, and takes the cheapest.
/// The first of them is greedy's own choice, so the plan is never dearer than greedy's.
/// </summary>
internal sealed class LookAheadSplit(SplitTable table, int candidates) : IChooser
{
    const int MostCandidates = 8;

    // A few tenths of a second of work; beyond it fewer candidates are tried, in the end greedy's alone.
    const long MostWork = 15_000_000;

    readonly GreedySplit greedy = new(table);

    /// <summary>How many candidates can be tried at each step of this problem; 1 means that there is no looking ahead.</summary>
    public static int CandidatesFor(SplitTable table)
    {
        long work = new GreedySplit(table).Work([.. Enumerable.Range(0, table.Causes)], 0);
        return (int)Math.Clamp(MostWork / Math.Max(1, work), 1, MostCandidates);
    }

    public int Choose(int[] causes, long done)
    {
        (int Check, double Cost) best = (-1, double.PositiveInfinity);
        foreach (int check in Candidates(causes, done))
        {
            double cost = greedy.CostOf(check, causes, done);
            if (cost < best.Cost - OrderCosts.Equal)
                best = (check, cost);
        }

        return best.Check;
    }

    IEnumerable<int> Candidates(int[] causes, long done)
    {
        List<(int Check, double Ratio)> found = [];
        for (int check = 0; check < table.Checks; check++)
        {
            if (greedy.Ratio(check, causes, done) is { } ratio)
                found.Add((check, ratio));
        }

        found.Sort((a, b) => a.Ratio != b.Ratio ? b.Ratio.CompareTo(a.Ratio) : a.Check.CompareTo(b.Check));
        return found.Take(candidates).Select(f => f.Check);
    }
}
