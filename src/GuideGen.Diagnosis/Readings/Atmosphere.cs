namespace GuideGen.Diagnosis.Readings;

/// <summary>Gauge and absolute pressure, in kPa.</summary>
public static class Atmosphere
{
    /// <summary>
    /// Air pressure in the standard atmosphere (ISO 2533:1975) at a height in metres, -1,000 to 11,000. For want of a
    /// measured one: a weather report's pressure is reduced to sea level and is no use at height.
    /// </summary>
    public static double PressureAt(double metres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(metres, -1000);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(metres, 11_000);
        return 101.325 * Math.Pow(1 - 2.25577e-5 * metres, 5.25588);
    }

    public static double Absolute(double gauge, double ambient) => gauge + ambient;

    public static double Gauge(double absolute, double ambient) => absolute - ambient;

    /// <param name="vacuum">How far below the air's pressure, as a vacuum gauge shows it, 0 or more.</param>
    /// <param name="ambient">The air's pressure.</param>
    public static double AbsoluteOfVacuum(double vacuum, double ambient) => ambient - vacuum;
}
