using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace GuideGen.Codes;

/// <summary>What can hurt on a subject, whatever the condition. General trade practice, no standard behind it.</summary>
static partial class SubjectCautions
{
    static readonly (Regex Subject, string Caution)[] Table =
    [
        (HighVoltage(), "High voltage can kill, even with everything switched off: work on orange cables and the parts they lead to is for "
            + "qualified people with the maker's procedure."),
        (Restraints(), "Airbags and belt tensioners fire with great force: do not probe, part or drop them; leave them to a qualified workshop."),
        (Brakes(), "Brakes and steering keep you alive: if pedal, steering or warning lamps are not as usual, do not drive, and have the work checked by a workshop."),
        (FuelPressure(), "Fuel lines and rails can be under a pressure that cuts skin: never open them or search leaks by hand; follow the maker's procedure."),
        (FuelVapour(), "Fuel and its vapours catch fire: no flame, no spark, work outdoors or with plenty of air."),
        (Ignition(), "Ignition parts carry a voltage that can kill: engine off before you touch them."),
        (HotExhaust(), "Exhaust parts stay hot enough to burn you and to set things on fire long after the engine stops."),
        (Coolant(), "Hot coolant scalds: never open the system before it is cold."),
        (Refrigerant(), "Refrigerant freezes skin and eyes and may only be handled by licensed people."),
        (Fans(), "Fans and shutters can start on their own, even with the engine off."),
        (Reductant(), "Reductant irritates skin and eyes and harms paint: gloves, and rinse with plenty of water."),
        (Battery(), "Batteries give off explosive gas and hold great currents: no sparks, eye protection, no metal tools across the terminals."),
    ];

    public static ImmutableArray<string> For(CodeEntry entry) => [.. Table.Where(r => r.Subject.IsMatch(entry.Subject)).Select(r => r.Caution)];

    [GeneratedRegex("traction battery|high voltage|hybrid|drive motor|inverter|generator phase|battery charg|charge port|charging s|"
        + "DC/|/DC|AC/AC|air conditioning compressor|hydrogen|motor electronics|drive electronics")]
    private static partial Regex HighVoltage();

    [GeneratedRegex("deployment|airbag|pretensioner|restraint|seat belt|roll over|occupant|steering column")]
    private static partial Regex Restraints();

    [GeneratedRegex(@"\bbrake|\bABS\b|wheel speed|tone wheel|steering|master cylinder|stability|traction control|yaw|tyre")]
    private static partial Regex Brakes();

    [GeneratedRegex("fuel rail|fuel pressure|fuel pump|fuel volume|injector|injection|fuel system|fuel tank|fuel heater|hydraulic fuel")]
    private static partial Regex FuelPressure();

    [GeneratedRegex("EVAP|fuel vapour|fuel tank|fuel level|fuel cap|fuel filler|refueling|fuel shut-off|alternative fuel")]
    private static partial Regex FuelVapour();

    [GeneratedRegex(@"ignition coil|ignition \[\]|ignition timing|combustion")]
    private static partial Regex Ignition();

    [GeneratedRegex("exhaust|catal|particulate filter|oxygen sensor|NOx|turbocharger|supercharger|wastegate")]
    private static partial Regex HotExhaust();

    [GeneratedRegex("coolant|thermostat|cooling system|radiator")]
    private static partial Regex Coolant();

    [GeneratedRegex("refrigerant|air conditioning")]
    private static partial Regex Refrigerant();

    [GeneratedRegex(@"\bfan\b|shutter|air dam|aerodynamic")]
    private static partial Regex Fans();

    [GeneratedRegex("reductant")]
    private static partial Regex Reductant();

    [GeneratedRegex(@"^battery (?!charg)|12 volt battery|charging system voltage|^system voltage|alternator|starter")]
    private static partial Regex Battery();
}
