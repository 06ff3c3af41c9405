using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Model;

/// <summary>A value to measure and the limits it should keep: fixed ones, or a table over another quantity.</summary>
/// <param name="When">The state of the vehicle in which the limits hold.</param>
/// <param name="IsAbsolute">For a pressure: absolute rather than gauge; null where it does not apply.</param>
public sealed record Reading(
    Located<string> Name,
    Located<string> Quantity,
    Located<string> Unit,
    Located<double>? Low,
    Located<double>? High,
    LimitTable? Over,
    Located<string> When,
    Located<bool>? IsAbsolute);

/// <summary>Limits that depend on another quantity, such as a sensor's resistance on its temperature.</summary>
public sealed record LimitTable(Located<string> Quantity, Located<string> Unit, ImmutableArray<LimitRow> Rows);

/// <summary>The quantities a reading may have, with the units an author may write (SI or units accepted for use with it, and psi).</summary>
public static class Quantities
{
    public static FrozenDictionary<string, ImmutableArray<string>> Units { get; } = new Dictionary<string, ImmutableArray<string>>
    {
        ["pressure"] = ["kPa", "bar", "mbar", "psi"],
        ["voltage"] = ["V", "mV"],
        ["current"] = ["A", "mA"],
        ["resistance"] = ["ohm", "kohm", "Mohm"],
        ["temperature"] = ["degC", "degF"],
        ["torque"] = ["Nm"],
        ["length"] = ["mm"],
        ["time"] = ["s", "ms", "min"],
        ["frequency"] = ["Hz"],
        ["mass-flow"] = ["g/s", "kg/h"],
        ["ratio"] = ["%"],
        ["speed"] = ["rpm"],
        ["volume"] = ["ml", "l"],
    }.ToFrozenDictionary();

    internal static Shape<Located<string>> QuantityShape { get; } = new WordShape<string>(Units.Keys.Order(StringComparer.Ordinal).ToDictionary(k => k));

    /// <summary>As JSON Schemas, for a record with these two keys.</summary>
    internal static IEnumerable<string> UnitConditions => Units.OrderBy(u => u.Key, StringComparer.Ordinal).Select(u =>
        $$"""{ "if": { "properties": { "quantity": { "const": "{{u.Key}}" } } }, "then": { "properties": { "unit": {{Constraints.OneOf(u.Value)}} } } }""");

    internal static bool HasUnit(Located<string> quantity, Located<string> unit, FindingList findings)
    {
        var units = Units[quantity.Value];
        if (units.Contains(unit.Value)) return true;
        findings.Add(Rules.UnitUnknown.At(unit.Span, unit.Value, quantity.Value, string.Join(", ", units)));
        return false;
    }
}

sealed class ReadingShape : RecordShape<Reading>
{
    readonly Field<Located<string>> name;
    readonly Field<Located<string>> quantity;
    readonly Field<Located<string>> unit;
    readonly Field<Located<double>?> low;
    readonly Field<Located<double>?> high;
    readonly Field<LimitTable?> over;
    readonly Field<Located<string>> when;
    readonly Field<Located<bool>?> scale;

    public ReadingShape()
    {
        name = Required("name", Scalars.Text, "What is measured.");
        quantity = Required("quantity", Quantities.QuantityShape, "Which quantity it is.");
        unit = Required("unit", Scalars.Mark, "The unit of the limits.");
        low = Optional("low", Maybe.Of(Scalars.AnyNumber), null, "The lowest good value.");
        high = Optional("high", Maybe.Of(Scalars.AnyNumber), null, "The highest good value.");
        over = Optional<LimitTable?>("over", new LimitsOverShape(), null, "Limits as a table over another quantity, instead of low and high.");
        when = Required("when", Scalars.Text, "The state of the vehicle in which the limits hold.");
        scale = Optional("scale", Maybe.Of(Scalars.Word(("gauge", false), ("absolute", true))), null, "For a pressure: gauge or absolute.");
    }

    protected override string Conditions => $"[{Limits}, {Scale}, {string.Join(", ", Quantities.UnitConditions)}]";

    const string Limits = """
        { "oneOf": [{ "required": ["over"], "not": { "anyOf": [{ "required": ["low"] }, { "required": ["high"] }] } },
          { "anyOf": [{ "required": ["low"] }, { "required": ["high"] }], "not": { "required": ["over"] } }] }
        """;

    const string Scale = """
        { "if": { "properties": { "quantity": { "const": "pressure" } } }, "then": { "required": ["scale"] }, "else": { "not": { "required": ["scale"] } } }
        """;

    public override bool TryRead(YamlNode node, Binding binding, out Reading value)
    {
        // Where a limit could not be read, what is left says nothing about how the limits hold together.
        var before = binding.Findings.Count;
        return base.TryRead(node, binding, out value)
            && binding.Findings.Count == before
            && HasGoodUnits(value, binding.Findings)
            && HasGoodLimits(value, node, binding.Findings);
    }

    protected override Reading Make(RecordValues v) =>
        new(v.Get(name), v.Get(quantity), v.Get(unit), v.Get(low), v.Get(high), v.Get(over), v.Get(when), v.Get(scale));

    static bool HasGoodUnits(Reading reading, FindingList findings) =>
        Quantities.HasUnit(reading.Quantity, reading.Unit, findings)
        & (reading.Over is null || Quantities.HasUnit(reading.Over.Quantity, reading.Over.Unit, findings));

    static bool HasGoodLimits(Reading reading, YamlNode node, FindingList findings)
    {
        var objection = reading switch
        {
            { Over: null, Low: null, High: null } => "has neither low, high nor a table",
            { Over: not null } when reading.Low is not null || reading.High is not null => "has both a table and fixed limits",
            { Low: { } low, High: { } high } when low.Value > high.Value => "has a low above its high",
            { IsAbsolute: null, Quantity.Value: "pressure" } => "is a pressure that does not say 'scale: gauge' or 'scale: absolute'",
            { IsAbsolute: not null, Quantity.Value: not "pressure" } => "has a scale but is not a pressure",
            _ => null,
        };
        if (objection is not null) findings.Add(Rules.ReadingLimits.At(node.Span with { Length = 0 }, reading.Name.Value, objection));
        return objection is null;
    }
}

sealed class LimitsOverShape : RecordShape<LimitTable?>
{
    readonly Field<Located<string>> quantity;
    readonly Field<Located<string>> unit;
    readonly Field<ImmutableArray<LimitRow>> table;

    public LimitsOverShape()
    {
        quantity = Required("quantity", Quantities.QuantityShape, "The quantity the limits depend on.");
        unit = Required("unit", Scalars.Mark, "Its unit.");
        table = Required("table", new LimitTableShape(), "Rows of [x, low, high].");
    }

    protected override string Conditions => $"[{string.Join(", ", Quantities.UnitConditions)}]";

    protected override LimitTable Make(RecordValues v) => new(v.Get(quantity), v.Get(unit), v.Get(table));
}
