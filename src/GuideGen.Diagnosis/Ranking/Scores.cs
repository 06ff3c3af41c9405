namespace GuideGen.Diagnosis.Ranking;

/// <summary>How good stated probabilities were, once the truth is known. Lower is better in both.</summary>
public static class Scores
{
    /// <summary>Sum of squared misses over all hypotheses, 0 to 2 (G. W. Brier 1950, Monthly Weather Review 78:1-3).</summary>
    public static double Brier(IReadOnlyList<double> stated, int truth) =>
        stated.Select((p, i) => i == truth ? (1 - p) * (1 - p) : p * p).Sum();

    /// <summary>-ln of the probability of what came true (I. J. Good 1952).</summary>
    public static double Log(IReadOnlyList<double> stated, int truth) => -Math.Log(stated[truth]);
}
