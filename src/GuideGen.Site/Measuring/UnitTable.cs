using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Guide.Model;
using UnitsNet;
using UnitsNet.Units;
using UnitSystem = GuideGen.Guide.Model.UnitSystem;

namespace GuideGen.Site.Measuring;

/// <summary>A unit in which a quantity may be read: value in the quantity's base unit = factor × value + offset.</summary>
/// <param name="Key">As front matter writes it.</param>
/// <param name="Symbol">As the SI brochure prints it.</param>
/// <param name="System">Null where both systems use it.</param>
/// <param name="Counterpart">The unit of the other system that is shown beside it; null where there is none.</param>
public sealed record MeasuringUnit(string Key, string Symbol, UnitSystem? System, string? Counterpart, double Factor, double Offset)
{
    public double ToBase(double value) => (Factor * value) + Offset;

    public double FromBase(double value) => (value - Offset) / Factor;
}

/// <summary>Every unit an owner's meter may show, with factors from UnitsNet: the pages compute with them and need no library.</summary>
public static class UnitTable
{
    static readonly FrozenDictionary<string, ImmutableArray<MeasuringUnit>> ByQuantity = new Dictionary<string, ImmutableArray<MeasuringUnit>>
    {
        ["pressure"] = Of(
            Metric("kPa", PressureUnit.Kilopascal, "psi"),
            Metric("bar", PressureUnit.Bar, "psi"),
            Metric("mbar", PressureUnit.Millibar, "inHg"),
            Imperial("psi", PressureUnit.PoundForcePerSquareInch, "bar"),
            Imperial("inHg", PressureUnit.InchOfMercury, "mbar"),
            Metric("mmHg", PressureUnit.MillimeterOfMercury, "inHg")),
        ["voltage"] = Of(Both("V", ElectricPotentialUnit.Volt), Both("mV", ElectricPotentialUnit.Millivolt)),
        ["current"] = Of(Both("A", ElectricCurrentUnit.Ampere), Both("mA", ElectricCurrentUnit.Milliampere)),
        ["resistance"] = Of(
            Both("ohm", ElectricResistanceUnit.Ohm, "Ω"),
            Both("kohm", ElectricResistanceUnit.Kiloohm, "kΩ"),
            Both("Mohm", ElectricResistanceUnit.Megaohm, "MΩ")),
        ["temperature"] = Of(
            Metric("degC", TemperatureUnit.DegreeCelsius, "degF") with { Symbol = "°C" },
            Imperial("degF", TemperatureUnit.DegreeFahrenheit, "degC") with { Symbol = "°F" }),
        ["torque"] = Of(
            Metric("Nm", TorqueUnit.NewtonMeter, "lbf-ft") with { Symbol = "N m" },
            Imperial("lbf-ft", TorqueUnit.PoundForceFoot, "Nm") with { Symbol = "lbf ft" },
            Imperial("lbf-in", TorqueUnit.PoundForceInch, "Nm") with { Symbol = "lbf in" }),
        ["length"] = Of(Metric("mm", LengthUnit.Millimeter, "in"), Imperial("in", LengthUnit.Inch, "mm")),
        ["time"] = Of(Both("s", DurationUnit.Second), Both("ms", DurationUnit.Millisecond), Both("min", DurationUnit.Minute)),
        ["frequency"] = Of(Both("Hz", FrequencyUnit.Hertz), Both("kHz", FrequencyUnit.Kilohertz)),
        ["mass-flow"] = Of(
            Metric("g/s", MassFlowUnit.GramPerSecond, "lb/min"),
            Metric("kg/h", MassFlowUnit.KilogramPerHour, "lb/min"),
            Imperial("lb/min", MassFlowUnit.PoundPerMinute, "g/s")),
        ["ratio"] = Of(Both("%", RatioUnit.Percent)),
        ["speed"] = Of(Both("rpm", RotationalSpeedUnit.RevolutionPerMinute, "min⁻¹")),
        ["volume"] = Of(
            Metric("ml", VolumeUnit.Milliliter, "us-fl-oz"),
            Metric("l", VolumeUnit.Liter, "us-qt"),
            Imperial("us-fl-oz", VolumeUnit.UsOunce, "ml") with { Symbol = "US fl oz" },
            Imperial("us-qt", VolumeUnit.UsQuart, "l") with { Symbol = "US qt" },
            Imperial("imp-pt", VolumeUnit.ImperialPint, "l") with { Symbol = "imp pt" }),
    }.ToFrozenDictionary();

    /// <summary>The units of a quantity; the first is its base unit.</summary>
    /// <param name="quantity">A key of <see cref="Quantities.Units"/>.</param>
    public static ImmutableArray<MeasuringUnit> Units(string quantity) => ByQuantity[quantity];

    public static MeasuringUnit Find(string quantity, string key) => ByQuantity[quantity].First(u => u.Key == key);

    /// <summary>The unit and its counterpart in the other system, that of the guide's system first.</summary>
    public static ImmutableArray<MeasuringUnit> Shown(string quantity, string key, UnitSystem first)
    {
        var unit = Find(quantity, key);
        if (unit.Counterpart is null) return [unit];
        var other = Find(quantity, unit.Counterpart);
        return unit.System == first ? [unit, other] : [other, unit];
    }

    /// <param name="difference">True for a width or an uncertainty, which an offset does not move.</param>
    public static double Convert(double value, MeasuringUnit from, MeasuringUnit to, bool difference = false) =>
        from == to ? value : difference ? value * from.Factor / to.Factor : to.FromBase(from.ToBase(value));

    static ImmutableArray<MeasuringUnit> Of(params Draft[] drafts) => [.. drafts.Select(d => Measured(d, drafts[0].Unit))];

    static MeasuringUnit Measured(Draft draft, Enum baseUnit)
    {
        var offset = UnitConverter.Convert(0, draft.Unit, baseUnit);
        return new MeasuringUnit(draft.Key, draft.Symbol, draft.System, draft.Counterpart, UnitConverter.Convert(1, draft.Unit, baseUnit) - offset, offset);
    }

    static Draft Metric(string key, Enum unit, string counterpart) => new(key, key, UnitSystem.Metric, counterpart, unit);

    static Draft Imperial(string key, Enum unit, string counterpart) => new(key, key, UnitSystem.Imperial, counterpart, unit);

    static Draft Both(string key, Enum unit, string? symbol = null) => new(key, symbol ?? key, null, null, unit);

    sealed record Draft(string Key, string Symbol, UnitSystem? System, string? Counterpart, Enum Unit);
}
