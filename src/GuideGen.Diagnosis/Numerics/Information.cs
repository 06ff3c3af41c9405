namespace GuideGen.Diagnosis.Numerics;

internal static class Information
{
    /// <summary>Doubt in bits (C. E. Shannon 1948) over parts of 0 or more, which need not sum to 1.</summary>
    public static double Entropy(ReadOnlySpan<double> parts)
    {
        double sum = 0, bits = 0;
        foreach (double part in parts)
            sum += part;
        foreach (double part in parts)
            bits -= part > 0 ? part / sum * Math.Log2(part / sum) : 0;
        return bits;
    }
}
