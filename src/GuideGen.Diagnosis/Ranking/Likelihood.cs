using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace GuideGen.Diagnosis.Ranking;

internal static class Likelihood
{
    /// <summary>Keeps yes-or-no likelihoods inside [0.005, 0.995].</summary>
    public static ImmutableArray<double> Bound(ReadOnlySpan<double> values)
    {
        double[] bounded = new double[values.Length];
        for (int i = 0; i < bounded.Length; i++)
            bounded[i] = Math.Clamp(values[i], RankingModel.Least, 1 - RankingModel.Least);
        return ImmutableCollectionsMarshal.AsImmutableArray(bounded);
    }

    /// <summary>
    /// Rows are the outcomes of one thing, columns the hypotheses. No entry stays below 0.005, and each column sums
    /// to 1, so an outcome that the author thinks impossible can still come.
    /// </summary>
    public static ImmutableArray<ImmutableArray<double>> BoundTable(ImmutableArray<ImmutableArray<double>> rows)
    {
        if (rows.IsEmpty)
            return rows;
        var raised = rows.Select(row => row.Select(v => Math.Max(v, RankingModel.Least)).ToArray()).ToArray();
        double[] sums = [.. Enumerable.Range(0, rows[0].Length).Select(c => raised.Sum(row => row[c]))];
        return [.. raised.Select(row => row.Select((v, c) => v / sums[c]).ToImmutableArray())];
    }
}
