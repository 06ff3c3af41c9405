namespace GuideGen.Diagnosis.Readings;

/// <summary>How values between two rows of a table are found. Outside the table there is none.</summary>
public enum TableScale
{
    /// <summary>Straight line in both columns.</summary>
    Linear,

    /// <summary>
    /// ln of the value straight over 1/T, T in kelvin from a first column in degrees Celsius: what a thermistor
    /// follows, several times closer than a straight line.
    /// </summary>
    LogOverInverseKelvin,
}

internal static class Scale
{
    const double ZeroCelsius = 273.15;

    public static double Kelvin(double celsius) => celsius + ZeroCelsius;

    public static double Celsius(double kelvin) => kelvin - ZeroCelsius;

    public static double OfKey(this TableScale scale, double key) =>
        scale == TableScale.Linear ? key : 1 / Kelvin(key);

    public static double KeyOf(this TableScale scale, double scaled) =>
        scale == TableScale.Linear ? scaled : Celsius(1 / scaled);

    public static double OfValue(this TableScale scale, double value) =>
        scale == TableScale.Linear ? value : Math.Log(value);

    public static double ValueOf(this TableScale scale, double scaled) =>
        scale == TableScale.Linear ? scaled : Math.Exp(scaled);
}
