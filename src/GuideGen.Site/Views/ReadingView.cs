using System.Collections.Immutable;
using System.Text.Json;
using GuideGen.Diagnosis.Readings;
using GuideGen.Guide.Model;
using GuideGen.Site.Measuring;
using Scriban.Runtime;
using LimitTable = GuideGen.Guide.Model.LimitTable;

namespace GuideGen.Site.Views;

/// <summary>A value to measure: its limits in both unit systems, and what the page needs to judge an owner's own value.</summary>
static class ReadingView
{
    static readonly JsonSerializerOptions Json = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

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
        new
        {
            unit = reading.Unit.Value,
            units = UnitTable.Units(reading.Quantity.Value).ToDictionary(u => u.Key, u => new[] { u.Factor, u.Offset }),
            low = reading.Low?.Value,
            high = reading.High?.Value,
            scale = reading.IsAbsolute is { } isAbsolute ? (isAbsolute.Value ? "absolute" : "gauge") : null,
            over = reading.Over is { } over ? DataOf(reading, over) : null,
        },
        Json);

    static object DataOf(Reading reading, LimitTable over)
    {
        var curve = CurveOf(reading, over);
        return new
        {
            unit = KeyUnit(over).Key,
            units = UnitTable.Units(over.Quantity.Value).ToDictionary(u => u.Key, u => new[] { u.Factor, u.Offset }),
            rows = ReadingLimits.RowsOf(over).Select(r => new { key = r.Key, low = r.Low, high = r.High }),
            scale = ReadingLimits.ScaleOf(reading) == TableScale.Linear ? "linear" : "logOverInverseKelvin",
            keys = curve.Keys,
            values = curve.Values,
            logarithmic = curve.IsLogarithmic,
        };
    }
}
