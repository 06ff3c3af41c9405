using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>Visits every set of faults up to a size and sums what is asked of them.</summary>
internal sealed class FaultSetWalk(
    ImmutableArray<Hypothesis> faults, ImmutableArray<NoisyOrFinding> findings, IReadOnlyDictionary<string, bool> present)
{
    const int Kept = 10;
    const double Most = 1 - RankingModel.Least;

    readonly double[] sums = new double[faults.Length];
    readonly bool[] seen = [.. findings.Select(f => present[f.Id])];
    readonly PriorityQueue<(int[] Faults, double Weight), double> best = new();
    readonly int[] chosen = new int[faults.Length];
    double total;

    public void Visit(int most)
    {
        double none = faults.Aggregate(1.0, (product, fault) => product * (1 - Prior(fault)));
        double[][] absent = [.. Enumerable.Range(0, most + 1).Select(_ => new double[findings.Length])];
        // Without any leak, a finding that no fault explains would be impossible and the whole sum 0.
        for (int f = 0; f < findings.Length; f++)
            absent[0][f] = 1 - Math.Clamp(findings[f].Leak, RankingModel.Least, Most);
        Descend(0, 0, none, absent);
    }

    public double Marginal(int fault) => sums[fault] / total;

    public ImmutableArray<FaultSet> Likeliest() =>
    [
        .. best.UnorderedItems.Select(item => new FaultSet(
                [.. item.Element.Faults.Select(f => faults[f].Id).Order(StringComparer.Ordinal)],
                item.Element.Weight / total))
            .OrderByDescending(s => s.Probability).ThenBy(s => string.Join(' ', s.Faults), StringComparer.Ordinal),
    ];

    void Descend(int size, int from, double prior, double[][] absent)
    {
        Count(size, prior * Likelihood(absent[size]));
        if (size + 1 == absent.Length)
            return;
        for (int fault = from; fault < faults.Length; fault++)
        {
            chosen[size] = fault;
            for (int f = 0; f < findings.Length; f++)
                absent[size + 1][f] = absent[size][f] * (1 - Math.Min(findings[f].Links[fault], Most));
            double odds = Prior(faults[fault]) / (1 - Prior(faults[fault]));
            Descend(size + 1, fault + 1, prior * odds, absent);
        }
    }

    void Count(int size, double weight)
    {
        total += weight;
        for (int i = 0; i < size; i++)
            sums[chosen[i]] += weight;
        if (best.Count == Kept && best.TryPeek(out _, out double least) && weight <= least)
            return;
        best.Enqueue((chosen[..size], weight), weight);
        if (best.Count > Kept)
            best.Dequeue();
    }

    double Likelihood(double[] absent)
    {
        double product = 1;
        for (int f = 0; f < absent.Length; f++)
            product *= seen[f] ? 1 - absent[f] : absent[f];
        return product;
    }

    static double Prior(Hypothesis fault) => Math.Min(fault.Prior, Most);
}
