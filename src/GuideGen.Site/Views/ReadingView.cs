using System.Collections.Immutable;
using System.Text.Json;
using GuideGen.Diagnosis.Readings;
using GuideGen.Guide.Model;
using GuideGen.Site.Measuring;
using GuideGen.Site.Rendering;
using Scriban.Runtime;
using LimitTable = GuideGen.Guide.Model.LimitTable;

namespace GuideGen.Site.Views;

/// <summary>A value to measure: its limits in both unit systems, and what the page needs to judge an owner's own value.</summary>
static class ReadingView
{
    public static ScriptObject Of(ViewContext view, Reading reading, int number)
    {
        var units = Shown(view, reading.Quantity.Value, reading.Unit.Value);
        return new ScriptObject
        {
            ["name"] = reading.Name.Value,
            ["number"] = number,
            ["units"] = new ScriptArray(units.Select(u => u.Symbol)),
            ["when"] = reading.When.Value,
            ["scale"] = reading.IsAbsolute is { } isAbsolute ? (isAbsolute.Value ? "absolute" : "gauge") : null,
            ["limits"] = new ScriptArray(reading.Over is null ? units.Select(u => $"{Limits(view, reading, u)} {u.Symbol}") : []),
            ["over"] = reading.Over is { } over ? Over(view, reading, over) : null,
            ["choices"] = Choices(reading.Quantity.Value, units[0]),
            ["data"] = Data(reading),
        };
    }

    static ImmutableArray<MeasuringUnit> Shown(ViewContext view, string quantity, string unit) => UnitTable.Shown(quantity, unit, view.Guide.Settings.Units.Value);

    static string Limits(ViewContext view, Reading reading, MeasuringUnit to)
    {
        var from = UnitTable.Find(reading.Quantity.Value, reading.Unit.Value);
        var (low, high) = (Text(view, reading.Low?.Value, from, to), Text(view, reading.High?.Value, from, to));
        return low is null ? view.Fill("check.to", high!) : high is null ? view.Fill("check.from", low) : view.Fill("check.between", low, high);
    }

    static string? Text(ViewContext view, double? value, MeasuringUnit from, MeasuringUnit to) => value is not { } known ? null
        : from == to ? view.Number(known)
        : ReadingLimits.Rounded(UnitTable.Convert(known, from, to), view.Words.Culture);

    static ScriptObject Over(ViewContext view, Reading reading, LimitTable over)
    {
        var (own, ownKey) = (UnitTable.Find(reading.Quantity.Value, reading.Unit.Value), UnitTable.Find(over.Quantity.Value, over.Unit.Value));
        var (units, keys) = (Shown(view, reading.Quantity.Value, reading.Unit.Value), Shown(view, over.Quantity.Value, over.Unit.Value));
        return new ScriptObject
        {
            ["quantity"] = view.Words["quantity." + over.Quantity.Value],
            ["units"] = new ScriptArray(keys.Select(u => u.Symbol)),
            ["choices"] = Choices(over.Quantity.Value, keys[0]),
            ["rows"] = new ScriptArray(over.Rows.Select(r => new ScriptObject
            {
                ["keys"] = new ScriptArray(keys.Select(u => Text(view, r.X, ownKey, u))),
                ["limits"] = new ScriptArray(units.Select(u => view.Fill("check.between", Text(view, r.Low, own, u)!, Text(view, r.High, own, u)!))),
            })),
            ["curve"] = CurveOf(reading, over).Draw(view.Fill("reading.curve", reading.Name.Value, own.Symbol, UnitTable.Units(over.Quantity.Value)[0].Symbol)),
            ["curve_unit"] = own.Symbol,
            ["curve_key"] = KeyUnit(over).Symbol,
        };
    }

    /// <summary>Temperatures are computed and drawn in degrees Celsius, other keys as the author wrote them.</summary>
    static MeasuringUnit KeyUnit(LimitTable over) =>
        over.Quantity.Value == "temperature" ? UnitTable.Units("temperature")[0] : UnitTable.Find(over.Quantity.Value, over.Unit.Value);

    static ReadingCurve CurveOf(Reading reading, LimitTable over) => new(ReadingLimits.RowsOf(over), ReadingLimits.ScaleOf(reading));

    static ScriptArray Choices(string quantity, MeasuringUnit chosen) =>
    [
        .. UnitTable.Units(quantity).Select(u => new ScriptObject { ["key"] = u.Key, ["symbol"] = u.Symbol, ["chosen"] = u == chosen }),
    ];

    static string Data(Reading reading) => JsonSerializer.Serialize(
        new ReadingData(
            reading.Unit.Value,
            Factors(reading.Quantity.Value),
            reading.Low?.Value,
            reading.High?.Value,
            reading.IsAbsolute is { } isAbsolute ? (isAbsolute.Value ? "absolute" : "gauge") : null,
            reading.Over is { } over ? DataOf(reading, over) : null),
        SiteJson.Default.ReadingData);

    static LimitsData DataOf(Reading reading, LimitTable over)
    {
        var curve = CurveOf(reading, over);
        return new(
            KeyUnit(over).Key,
            Factors(over.Quantity.Value),
            [.. ReadingLimits.RowsOf(over)],
            ReadingLimits.ScaleOf(reading) == TableScale.Linear ? "linear" : "logOverInverseKelvin",
            curve.Keys,
            curve.Values,
            curve.IsLogarithmic);
    }

    /// <summary>Factor and offset of each unit of a quantity.</summary>
    static Dictionary<string, double[]> Factors(string quantity) => UnitTable.Units(quantity).ToDictionary(u => u.Key, u => new[] { u.Factor, u.Offset });
}

/// <summary>What a page's script judges a reading by.</summary>
/// <param name="Scale">Whether a pressure is absolute or gauge; null for all else.</param>
sealed record ReadingData(string Unit, Dictionary<string, double[]> Units, double? Low, double? High, string? Scale, LimitsData? Over);

/// <summary>Limits over another quantity, and the picture's two axes.</summary>
sealed record LimitsData(string Unit, Dictionary<string, double[]> Units, Diagnosis.Readings.LimitRow[] Rows, string Scale, Axis Keys, Axis Values, bool Logarithmic);
