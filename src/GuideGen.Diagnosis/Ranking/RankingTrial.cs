using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>One case ranked by a model that has not seen it. Of what the model stated only the sums are kept, since a guide has many cases.</summary>
public sealed class RankingTrial
{
    readonly double[] sums = new double[LeaveOneOut.Bins];
    readonly int[] counts = new int[LeaveOneOut.Bins];

    RankingTrial(RankingModel model, double[] stated, int truth)
    {
        foreach (double probability in stated)
        {
            sums[BinOf(probability)] += probability;
            counts[BinOf(probability)]++;
        }

        TruthBin = BinOf(stated[truth]);
        Place = PlaceOf(truth, model, stated);
        (Brier, Log) = (Scores.Brier(stated, truth), Scores.Log(stated, truth));
    }

    /// <param name="model">Whose causes these are.</param>
    /// <param name="priors">Of its causes, without the case.</param>
    /// <param name="logs">What the answers say, by hypothesis, as logarithms of likelihoods.</param>
    /// <param name="truth">The place of the true cause.</param>
    public static RankingTrial Of(RankingModel model, ImmutableArray<double> priors, double[] logs, int truth) => new(model, CauseRanking.Posterior(priors, logs), truth);

    /// <summary>How many causes stood before the true one.</summary>
    public int Place { get; }

    internal double Brier { get; }

    internal double Log { get; }

    internal int TruthBin { get; }

    internal ReadOnlySpan<double> Sums => sums;

    internal ReadOnlySpan<int> Counts => counts;

    static int PlaceOf(int truth, RankingModel model, double[] stated)
    {
        int before = 0;
        for (int h = 0; h < stated.Length; h++)
            before += CauseRanking.IsBefore(model, stated, h, truth) ? 1 : 0;
        return before;
    }

    static int BinOf(double probability) => Math.Min((int)(probability * LeaveOneOut.Bins), LeaveOneOut.Bins - 1);
}
