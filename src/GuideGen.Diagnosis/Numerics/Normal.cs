namespace GuideGen.Diagnosis.Numerics;

internal static class Normal
{
    /// <summary>
    /// z with P(-z &lt; Z &lt; z) = <paramref name="confidence"/>, for confidences above 0 and at most 0.999999.
    /// </summary>
    public static double TwoSided(double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(confidence);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(confidence, 0.999999);
        double half = confidence / 2, z = 0;
        // Right of 0 the curve is concave, so Newton's steps from 0 climb to the root and never pass it.
        for (int step = 0; step < 100; step++)
        {
            double next = z + (half - FromZero(z)) / Density(z);
            if (Math.Abs(next - z) <= 1e-15 * next)
                return next;
            z = next;
        }

        return z;
    }

    static double Density(double x) => Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);

    // P(0 < Z < x) by the series of G. Marsaglia 2004, Evaluating the normal distribution, J. Stat. Software 11(4).
    static double FromZero(double x)
    {
        double term = x, sum = x;
        for (int odd = 3; term > 1e-17 * sum; odd += 2)
        {
            term *= x * x / odd;
            sum += term;
        }

        return sum * Density(x);
    }
}
