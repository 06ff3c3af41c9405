namespace GuideGen.Diagnosis.Ordering;

/// <summary>
/// The best order when checks share preparations: the cheapest way on from each set of checks done, from the full
/// set backwards. Sharing breaks the rule of falling ratios (T. J. Ottosen, F. V. Jensen 2010, arXiv 1203.3502).
/// </summary>
internal static class OverSets
{
    public static int[] Best(OrderCosts costs)
    {
        int full = (1 << costs.Count) - 1;
        double[] onwards = new double[full + 1];
        for (int done = full - 1; done >= 0; done--)
            onwards[done] = Step(costs, onwards, done).Cost;
        int[] order = new int[costs.Count];
        for (int place = 0, done = 0; place < order.Length; place++)
        {
            order[place] = Step(costs, onwards, done).Check;
            done |= 1 << order[place];
        }

        return order;
    }

    static (int Check, double Cost) Step(OrderCosts costs, double[] onwards, int done)
    {
        (double left, long setups, int remaining) = State(costs, done);
        (int Check, double Cost) best = (-1, double.PositiveInfinity);
        foreach (int check in costs.All)
        {
            if ((done & (1 << check)) != 0)
                continue;
            double own = costs.InfersLast && remaining == 1 ? 0 : left * costs.Full(check, setups);
            double cost = own + onwards[done | (1 << check)];
            if (cost < best.Cost - OrderCosts.Equal)
                best = (check, cost);
        }

        return best;
    }

    static (double Left, long Setups, int Remaining) State(OrderCosts costs, int done)
    {
        double left = 1;
        long setups = 0;
        int remaining = costs.Count;
        foreach (int check in costs.All)
        {
            if ((done & (1 << check)) == 0)
                continue;
            left -= costs.Probability(check);
            setups |= costs.Needs(check);
            remaining--;
        }

        return (Math.Max(0, left), setups, remaining);
    }
}
