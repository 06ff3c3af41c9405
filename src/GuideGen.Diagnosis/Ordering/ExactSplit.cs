using System.Numerics;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>
/// Dynamic programming over the causes still possible and the preparations made (M. R. Garey 1972, SIAM J. Appl.
/// Math. 23:173-186; K. R. Pattipati, M. G. Alexandridis 1990, IEEE Trans. SMC 20:872-887). Which checks were done
/// does not matter: each has said all it can about the causes that are left.
/// </summary>
internal sealed class ExactSplit : IChooser
{
    /// <summary>Bits of a state: causes and preparations together. The tables take 12 bytes for each state.</summary>
    public const int MostBits = 22;

    public const int MostCauses = 16;

    const double Unknown = -1;

    readonly SplitTable table;
    readonly int[][] shows;
    readonly double[] mass;
    readonly double[] cost;
    readonly int[] choice;

    public ExactSplit(SplitTable table)
    {
        this.table = table;
        shows = [.. Enumerable.Range(0, table.Checks).Select(Masks)];
        mass = new double[1 << table.Causes];
        for (int set = 1; set < mass.Length; set++)
            mass[set] = mass[set & (set - 1)] + table.Probability[BitOperations.TrailingZeroCount(set)];
        cost = new double[1 << (table.Causes + table.Ledger.Count)];
        Array.Fill(cost, Unknown);
        choice = new int[cost.Length];
    }

    public static bool Fits(SplitTable table) =>
        table.Causes <= MostCauses && table.Causes + table.Ledger.Count <= MostBits;

    public int Choose(int[] causes, long done)
    {
        int set = causes.Aggregate(0, (bits, cause) => bits | (1 << cause));
        Cost(set, (int)done);
        return choice[State(set, (int)done)];
    }

    int[] Masks(int check)
    {
        int[] masks = new int[table.OutcomesOf(check)];
        for (int cause = 0; cause < table.Causes; cause++)
            masks[table.Outcome[check][cause]] |= 1 << cause;
        return masks;
    }

    int State(int set, int done) => set | (done << table.Causes);

    double Cost(int set, int done)
    {
        int state = State(set, done);
        if (cost[state] != Unknown)
            return cost[state];
        (double best, int chosen) = (0, -1);
        for (int check = 0; check < shows.Length && (set & (set - 1)) != 0; check++)
        {
            if (Array.Exists(shows[check], outcome => (outcome & set) == set))
                continue;
            double sum = mass[set] * table.CostOf(check, done) + After(check, set, done | (int)table.Needs[check]);
            if (chosen < 0 || sum < best - OrderCosts.Equal)
                (best, chosen) = (sum, check);
        }

        choice[state] = chosen;
        return cost[state] = best;
    }

    double After(int check, int set, int done)
    {
        double sum = 0;
        foreach (int outcome in shows[check])
        {
            int left = outcome & set;
            if ((left & (left - 1)) != 0)
                sum += Cost(left, done);
        }

        return sum;
    }
}
