using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

internal static class Likelihood
{
    /// <summary>Keeps yes-or-no likelihoods inside [0.005, 0.995].</summary>
    public static double Bound(double likelihood) => Math.Clamp(likelihood, RankingModel.Least, 1 - RankingModel.Least);

    public static LikelihoodRow Bound(LikelihoodRow row) => row.Map(Bound);

    /// <summary>
    /// Rows are the outcomes of one thing, columns the hypotheses. No entry stays below 0.005, and each column sums
    /// to 1, so an outcome that the author thinks impossible can still come.
    /// </summary>
    public static ImmutableArray<LikelihoodRow> BoundTable(ImmutableArray<LikelihoodRow> rows) => LikelihoodTable.Map(rows, (_, column) =>
    {
        double sum = column.Sum(v => Math.Max(v, RankingModel.Least));
        return [.. column.Select(v => Math.Max(v, RankingModel.Least) / sum)];
    });
}
