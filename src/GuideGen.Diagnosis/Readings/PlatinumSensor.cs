namespace GuideGen.Diagnosis.Readings;

/// <summary>
/// Platinum resistance thermometer (IEC 60751), -200 to 850 degrees Celsius: exhaust-gas sensors are often such.
/// </summary>
/// <param name="OhmsAtZero">100 for a Pt100, 200 for a Pt200.</param>
public sealed record PlatinumSensor(double OhmsAtZero) : ITemperatureSensor
{
    const double A = 3.9083e-3, B = -5.775e-7, C = -4.183e-12;
    const double Coldest = -200, Hottest = 850;

    public double OhmsAt(double celsius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(celsius, Coldest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(celsius, Hottest);
        double belowZero = celsius < 0 ? C * (celsius - 100) * celsius * celsius * celsius : 0;
        return OhmsAtZero * (1 + A * celsius + B * celsius * celsius + belowZero);
    }

    /// <summary>Solves the quadratic above 0 and halves a bracket below it, where the curve is of fourth degree.</summary>
    public double CelsiusAt(double ohms)
    {
        if (ohms >= OhmsAtZero)
            return (-A + Math.Sqrt(A * A - 4 * B * (1 - ohms / OhmsAtZero))) / (2 * B);
        double low = Coldest, high = 0;
        ArgumentOutOfRangeException.ThrowIfLessThan(ohms, OhmsAt(low));
        while (high - low > 1e-10)
        {
            double middle = (low + high) / 2;
            if (OhmsAt(middle) < ohms)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }
}
