namespace GuideGen.Diagnosis.Readings;

/// <summary>A sensor whose resistance in ohms follows its temperature in degrees Celsius.</summary>
public interface ITemperatureSensor
{
    double CelsiusAt(double ohms);

    double OhmsAt(double celsius);
}

/// <summary>
/// 1/T = A + B ln R + C (ln R)^3, T in kelvin (J. S. Steinhart, S. R. Hart 1968, Deep-Sea Res. 15:497-503).
/// </summary>
public sealed record SteinhartHart(double A, double B, double C) : ITemperatureSensor
{
    /// <summary>The curve through three measured points.</summary>
    public static SteinhartHart Through(TableRow first, TableRow second, TableRow third)
    {
        (double l1, double l2, double l3) = (Math.Log(first.Value), Math.Log(second.Value), Math.Log(third.Value));
        double y1 = 1 / Scale.Kelvin(first.Key);
        double slope2 = (1 / Scale.Kelvin(second.Key) - y1) / (l2 - l1);
        double slope3 = (1 / Scale.Kelvin(third.Key) - y1) / (l3 - l1);
        double c = (slope3 - slope2) / (l3 - l2) / (l1 + l2 + l3);
        double b = slope2 - c * (l1 * l1 + l1 * l2 + l2 * l2);
        return new(y1 - (b + l1 * l1 * c) * l1, b, c);
    }

    public double CelsiusAt(double ohms)
    {
        double l = Math.Log(ohms);
        return Scale.Celsius(1 / (A + B * l + C * l * l * l));
    }

    // Cardano: the cubic has one real root, because B and C are above 0 in a thermistor.
    public double OhmsAt(double celsius)
    {
        double x = (A - 1 / Scale.Kelvin(celsius)) / (2 * C);
        double y = Math.Sqrt(Math.Pow(B / (3 * C), 3) + x * x);
        return Math.Exp(Math.Cbrt(y - x) - Math.Cbrt(y + x));
    }
}

/// <summary>R = R0 exp(beta (1/T - 1/T0)), T in kelvin: good near T0 only.</summary>
public sealed record BetaThermistor(double Beta, double ReferenceOhms, double ReferenceCelsius) : ITemperatureSensor
{
    /// <summary>The beta (kelvin) between two measured points, referred to the first.</summary>
    public static BetaThermistor Through(TableRow first, TableRow second) => new(
        Math.Log(first.Value / second.Value) / (1 / Scale.Kelvin(first.Key) - 1 / Scale.Kelvin(second.Key)),
        first.Value,
        first.Key);

    public double CelsiusAt(double ohms) =>
        Scale.Celsius(1 / (1 / Scale.Kelvin(ReferenceCelsius) + Math.Log(ohms / ReferenceOhms) / Beta));

    public double OhmsAt(double celsius) =>
        ReferenceOhms * Math.Exp(Beta * (1 / Scale.Kelvin(celsius) - 1 / Scale.Kelvin(ReferenceCelsius)));
}
