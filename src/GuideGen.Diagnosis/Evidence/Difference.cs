namespace GuideGen.Diagnosis.Evidence;

/// <summary>How far apart the shares of two independent groups are, for instance two year ranges.</summary>
public static class Difference
{
    /// <summary>
    /// Interval for share(first) - share(second), between -1 and 1; null when a group has no reports.
    /// Method 10 of R. G. Newcombe 1998, Stat. Med. 17:873-890.
    /// </summary>
    public static Interval? Between(Proportion first, Proportion second, double confidence = 0.95)
    {
        if (first.Interval(confidence) is not { } a || second.Interval(confidence) is not { } b)
            return null;
        double p = first.Share!.Value, q = second.Share!.Value;
        return new(p - q - Hypotenuse(p - a.Low, b.High - q), p - q + Hypotenuse(a.High - p, q - b.Low));
    }

    static double Hypotenuse(double a, double b) => Math.Sqrt(a * a + b * b);
}
