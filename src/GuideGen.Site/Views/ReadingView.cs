using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>A value to measure, with its limits as text: fixed ones, or rows over another quantity.</summary>
static class ReadingView
{
    public static ScriptObject Of(Reading reading) => new()
    {
        ["name"] = reading.Name.Value,
        ["unit"] = Symbol(reading.Unit.Value),
        ["low"] = reading.Low is { } low ? ViewContext.Number(low.Value) : null,
        ["high"] = reading.High is { } high ? ViewContext.Number(high.Value) : null,
        ["when"] = reading.When.Value,
        ["scale"] = reading.IsAbsolute is { } isAbsolute ? (isAbsolute.Value ? "absolute" : "gauge") : null,
        ["over"] = reading.Over is { } over ? Over(over) : null,
    };

    static ScriptObject Over(LimitTable table) => new()
    {
        ["quantity"] = table.Quantity.Value,
        ["unit"] = Symbol(table.Unit.Value),
        ["rows"] = new ScriptArray(table.Rows.Select(r => new ScriptArray(new object[] { r.X, r.Low, r.High }.Select(n => ViewContext.Number((double)n))))),
    };

    /// <summary>Symbols as the SI brochure prints them; front matter keeps to letters that every keyboard has.</summary>
    static string Symbol(string unit) => unit switch
    {
        "ohm" => "Ω",
        "kohm" => "kΩ",
        "Mohm" => "MΩ",
        "degC" => "°C",
        "degF" => "°F",
        "Nm" => "N m",
        "rpm" => "min⁻¹",
        _ => unit,
    };
}
