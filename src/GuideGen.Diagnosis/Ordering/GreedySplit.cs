using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>Chooses the next check for a set of causes; -1 when none tells them apart.</summary>
internal interface IChooser
{
    int Choose(int[] causes, long done);
}

/// <summary>Each time the check with the most information (bits) per cost; equal ones by id.</summary>
internal sealed class GreedySplit(SplitTable table) : IChooser
{
    // Only a floor against division by zero; a free check that tells something always comes first.
    const double LeastCost = 1e-6;

    public int Choose(int[] causes, long done)
    {
        (int Check, double Ratio) best = (-1, double.NegativeInfinity);
        for (int check = 0; check < table.Checks; check++)
        {
            if (Ratio(check, causes, done) is { } ratio && ratio > best.Ratio)
                best = (check, ratio);
        }

        return best.Check;
    }

    /// <summary>Bits per cost, rounded so that equal ones stay equal; null when the check shows one outcome for all.</summary>
    public double? Ratio(int check, int[] causes, long done)
    {
        int[] outcome = table.Outcome[check];
        Span<double> masses = stackalloc double[table.OutcomesOf(check)];
        bool splits = false;
        foreach (int cause in causes)
        {
            masses[outcome[cause]] += table.Probability[cause];
            splits |= outcome[cause] != outcome[causes[0]];
        }

        return splits
            ? Math.Round(Information.Entropy(masses) / Math.Max(LeastCost, table.CostOf(check, done)), 12)
            : null;
    }

    /// <summary>Expected cost from here on when greedy goes on to the end, not divided by the causes' probability.</summary>
    public double Cost(int[] causes, long done)
    {
        int check = causes.Length > 1 ? Choose(causes, done) : -1;
        return check < 0 ? 0 : CostOf(check, causes, done);
    }

    /// <summary>The same with this check first.</summary>
    public double CostOf(int check, int[] causes, long done)
    {
        double cost = causes.Sum(c => table.Probability[c]) * table.CostOf(check, done);
        foreach (int[] part in table.Split(check, causes))
            cost += Cost(part, done | table.Needs[check]);
        return cost;
    }

    /// <summary>
    /// Looks at a cause by a check when greedy is run again from each step of its own plan: the work of one candidate
    /// in a look ahead.
    /// </summary>
    public long Work(int[] causes, long done, int depth = 1)
    {
        int check = causes.Length > 1 ? Choose(causes, done) : -1;
        return check < 0
            ? 0
            : (long)depth * table.Checks * causes.Length
                + table.Split(check, causes).Sum(part => Work(part, done | table.Needs[check], depth + 1));
    }
}
