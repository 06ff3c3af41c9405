using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Diagnosis.Readings;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Measuring;

/// <summary>A reading's limits as numbers to compute with, and in words for the page.</summary>
public static class ReadingLimits
{
    /// <summary>A resistance over temperature is a thermistor's as long as it can have a logarithm; everything else is read on a straight line.</summary>
    public static TableScale ScaleOf(Reading reading) =>
        reading is { Quantity.Value: "resistance", Over: { Quantity.Value: "temperature" } over } && over.Rows.All(r => r.Low > 0 && r.High > 0)
            ? TableScale.LogOverInverseKelvin
            : TableScale.Linear;

    /// <summary>Rows for the computation, with temperatures in degrees Celsius, which its logarithmic scale expects.</summary>
    public static ImmutableArray<Diagnosis.Readings.LimitRow> RowsOf(Guide.Model.LimitTable over)
    {
        var (from, to) = (UnitTable.Find(over.Quantity.Value, over.Unit.Value), UnitTable.Units(over.Quantity.Value)[0]);
        return [.. over.Rows.Select(r => new Diagnosis.Readings.LimitRow(KeyIn(r.X), r.Low, r.High))];

        double KeyIn(double x) => over.Quantity.Value == "temperature" ? UnitTable.Convert(x, from, to) : x;
    }

    /// <summary>A value as it reads after conversion: three significant digits, or all digits before the point.</summary>
    public static string Rounded(double value, CultureInfo culture)
    {
        if (value == 0) return "0";
        var digits = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return Math.Round(value, digits).ToString("0.######", culture);
    }
}
