namespace GuideGen.Diagnosis.Ordering;

/// <summary>
/// A good order for more checks than can be solved exactly. A block is a check with its preparations and whatever
/// becomes cheap through them; the block with the highest probability per cost goes next. Afterwards single checks
/// are moved to other places as long as that saves anything.
/// </summary>
internal static class Blocks
{
    const int MostRounds = 50;

    public static int[] Best(OrderCosts costs)
    {
        List<int> order = [];
        HashSet<int> left = [.. costs.All];
        long done = 0;
        while (left.Count > 0)
        {
            int[] block = left.Order().Select(lead => Grow(costs, lead, left, done))
                .Aggregate((best, next) => next.Ratio > best.Ratio ? next : best).Checks;
            order.AddRange(block);
            foreach (int check in block)
            {
                left.Remove(check);
                done |= costs.Needs(check);
            }
        }

        return Improve(costs, [.. order]);
    }

    // The lead pays for its preparations; others join while they raise the block's probability per cost.
    static (int[] Checks, double Ratio) Grow(OrderCosts costs, int lead, HashSet<int> left, long done)
    {
        double gain = costs.Probability(lead), cost = costs.Full(lead, done);
        long open = done | costs.Needs(lead);
        List<int> block = [lead];
        int[] others = [.. left.Where(i => i != lead && (costs.Needs(i) & ~open) == 0)];
        foreach (int next in CheckOrders.ByRatio(costs, others))
        {
            double p = costs.Probability(next), c = costs.Own(next);
            if (p * cost <= gain * c)
                break;
            block.Add(next);
            gain += p;
            cost += c;
        }

        return ([.. block], CheckOrders.Ratio(gain, cost));
    }

    static int[] Improve(OrderCosts costs, int[] order)
    {
        double best = costs.Expected(order);
        bool moved = true;
        for (int round = 0; moved && round < MostRounds; round++)
        {
            moved = false;
            for (int from = 0; from < order.Length; from++)
            {
                for (int to = 0; to < order.Length; to++)
                {
                    int[] candidate = Move(order, from, to);
                    double cost = costs.Expected(candidate);
                    if (cost >= best - OrderCosts.Equal)
                        continue;
                    (order, best, moved) = (candidate, cost, true);
                }
            }
        }

        return order;
    }

    static int[] Move(int[] order, int from, int to)
    {
        List<int> moved = [.. order];
        moved.RemoveAt(from);
        moved.Insert(to, order[from]);
        return [.. moved];
    }
}
