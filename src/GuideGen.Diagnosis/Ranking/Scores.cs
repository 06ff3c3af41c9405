namespace GuideGen.Diagnosis.Ranking;

/// <summary>How good stated probabilities were, once the truth is known. Lower is better in both.</summary>
public static class Scores
{
    /// <summary>Sum of squared misses over all hypotheses, 0 to 2 (G. W. Brier 1950, Monthly Weather Review 78:1-3).</summary>
    public static double Brier(ReadOnlySpan<double> stated, int truth)
    {
        double sum = (1 - stated[truth]) * (1 - stated[truth]);
        for (int i = 0; i < stated.Length; i++)
            sum += i == truth ? 0 : stated[i] * stated[i];
        return sum;
    }

    /// <summary>-ln of the probability of what came true (I. J. Good 1952).</summary>
    public static double Log(ReadOnlySpan<double> stated, int truth) => -Math.Log(stated[truth]);
}
