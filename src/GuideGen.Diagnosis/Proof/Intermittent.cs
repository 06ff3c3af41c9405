namespace GuideGen.Diagnosis.Proof;

/// <summary>How long a fault that comes and goes must stay away before silence means something.</summary>
public static class Intermittent
{
    /// <summary>
    /// Quiet driving cycles after which luck alone is at most <paramref name="risk"/> likely: the least N with
    /// (1 - f)^N &lt;= risk. For small f about 3/f (J. Hanley, A. Lippman-Hand 1983, JAMA 249:1743-1745).
    /// </summary>
    /// <param name="recurrence">Share f of driving cycles in which the fault used to show, above 0 and at most 1.</param>
    /// <param name="risk">Above 0 and below 1.</param>
    public static int CyclesNeeded(double recurrence, double risk = 0.05)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(recurrence);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(recurrence, 1);
        // A share such as 1/2 may meet the risk exactly; rounding must not ask for one cycle more.
        return recurrence == 1 ? 1 : (int)Math.Ceiling(Math.Log(risk) / Math.Log(1 - recurrence) - 1e-9);
    }

    /// <summary>Probability that it is cured after so many quiet cycles, when it was <paramref name="before"/> before them.</summary>
    public static double ChanceCured(double before, double recurrence, int quietCycles) =>
        before / (before + (1 - before) * Math.Pow(1 - recurrence, quietCycles));
}
