namespace GuideGen.Diagnosis.Numerics;

/// <summary>
/// The three functions that intervals and posteriors need. Own code because three functions do not pay for a
/// numerics library in the shipped tool; the tests hold them to such a library.
/// </summary>
internal static class SpecialFunctions
{
    const double StirlingFrom = 12;
    const double Tiny = 1e-300;
    const int MostSteps = 10_000;

    // Coefficients of x^-1, x^-3, ... in Stirling's series (Abramowitz and Stegun 1964, 6.1.41).
    static readonly double[] Stirling =
        [1.0 / 12, -1.0 / 360, 1.0 / 1260, -1.0 / 1680, 1.0 / 1188, -691.0 / 360360];

    /// <summary>ln of the gamma function of <paramref name="x"/> &gt; 0.</summary>
    public static double LogGamma(double x)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(x);
        double shift = 0;
        for (; x < StirlingFrom; x++)
            shift += Math.Log(x);
        double series = 0, power = 1 / x;
        foreach (double coefficient in Stirling)
        {
            series += coefficient * power;
            power /= x * x;
        }

        return (x - 0.5) * Math.Log(x) - x + 0.5 * Math.Log(2 * Math.PI) + series - shift;
    }

    /// <summary>The regularised incomplete beta function I_x(a, b), which is the distribution function of Beta(a, b).</summary>
    public static double RegularisedBeta(double x, double a, double b)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(a);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(b);
        if (x <= 0)
            return 0;
        if (x >= 1)
            return 1;
        double front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + a * Math.Log(x) + b * Math.Log(1 - x));
        // The fraction converges fast only on the near side of the mean; the far side is its mirror.
        return x < (a + 1) / (a + b + 2)
            ? front * BetaFraction(x, a, b) / a
            : 1 - front * BetaFraction(1 - x, b, a) / b;
    }

    /// <summary>The x with I_x(a, b) = <paramref name="p"/>: Newton's step, kept inside a bracket that halves when it strays.</summary>
    public static double InverseRegularisedBeta(double p, double a, double b)
    {
        if (p <= 0)
            return 0;
        if (p >= 1)
            return 1;
        double logScale = LogGamma(a + b) - LogGamma(a) - LogGamma(b);
        // So near to 0 the first term x^a / a of the series is the whole function (DLMF 8.17.7), and halving would never get there.
        double nearZero = Math.Exp((Math.Log(p * a) - logScale) / a);
        if (nearZero < 1e-12)
            return nearZero;
        double low = 0, high = 1, x = a / (a + b);
        for (int step = 0; step < 200 && high - low > 1e-16 * high; step++)
        {
            double miss = RegularisedBeta(x, a, b) - p;
            if (miss > 0)
                high = x;
            else
                low = x;
            double slope = Math.Exp(logScale + (a - 1) * Math.Log(x) + (b - 1) * Math.Log(1 - x));
            double next = x - miss / slope;
            if (!(next > low && next < high))
                next = (low + high) / 2;
            if (Math.Abs(next - x) <= 1e-16 * x)
                return next;
            x = next;
        }

        return x;
    }

    // DLMF 8.17.22, evaluated from the front (Lentz 1976, as modified by Thompson and Barnett 1986).
    static double BetaFraction(double x, double a, double b)
    {
        double c = 1, d = 1 / Away(1 - (a + b) * x / (a + 1)), value = d;
        for (int m = 1; m < MostSteps; m++)
        {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / Away(1 + even * d);
            c = Away(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / Away(1 + odd * d);
            c = Away(1 + odd / c);
            value *= d * c;
            if (Math.Abs(d * c - 1) < 1e-16)
                break;
        }

        return value;
    }

    static double Away(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
