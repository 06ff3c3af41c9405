namespace GuideGen.Guide.Tests.Pillars;

/// <summary>A hazard as an independent collection lists it.</summary>
/// <param name="Signal">By the meaning ANSI Z535.6 gives the word; which word fits is a judgement.</param>
/// <param name="Cues">Words in a text that point to it.</param>
/// <param name="Basis">Where the facts of the row come from.</param>
public sealed record HazardRow(string Slug, string Signal, bool IsGrave, string[] Cues, string Basis)
{
    public override string ToString() => Slug;
}

/// <summary>The 25 hazards of work on vehicles that the built-in book has to cover, put together apart from it.</summary>
static class HazardTable
{
    public static HazardRow[] Rows { get; } =
    [
        new("diesel-high-pressure", "danger", true, ["common rail", "injector line", "injector union", "high-pressure pump", "leak-off", "crack open"], "medical literature on injection injury"),
        new("hot-parts", "caution", false, ["turbo", "exhaust manifold", "catalyst", "downpipe", "exhaust", "EGR cooler"], "common practice, no source"),
        new("hot-coolant", "warning", false, ["coolant", "radiator cap", "expansion tank", "thermostat", "bleed screw", "hose off"], "common practice, no source"),
        new("moving-belts", "warning", false, ["engine running", "drive belt", "cooling fan", "pulley", "engine idling"], "HSE HSG261"),
        new("under-vehicle", "danger", true, ["jack", "lift", "under the car", "axle stand", "ramps", "gearbox down", "wheel off"], "ACCC figures; ASME PASE"),
        new("battery-12v", "warning", false, ["battery", "jump start", "charge", "terminal", "starter lead"], "HSE INDG139"),
        new("airbag", "danger", true, ["airbag", "SRS", "clock spring", "steering wheel off", "seat out", "pretensioner", "yellow connector"], "HSE HSG261; law on explosives"),
        new("high-voltage", "danger", true, ["orange cable", "high voltage", "inverter", "traction battery", "service plug", "DC-DC converter", "electric compressor"], "HSE guidance; ISO 6469-3 voltage class B"),
        new("refrigerant", "warning", true, ["air-conditioning line", "refrigerant", "evaporator", "condenser", "R134a", "R1234yf", "low-side port"], "US EPA section 609; EU F-gas rules"),
        new("petrol-fire", "danger", true, ["petrol", "fuel line", "fuel tank", "fuel pump", "fuel filter", "fuel return", "vapour line", "evaporative canister"], "HSE HSG261"),
        new("brake-hydraulics", "warning", false, ["brake fluid", "caliper", "bleed the brakes", "ABS", "brake hose", "electric parking brake"], "ISO 4925; common practice"),
        new("friction-dust", "warning", false, ["brake pads", "brake shoes", "brake drum", "clutch plate", "brake dust", "blow out"], "US EPA 2007; OSHA 1910.1001 appendix F"),
        new("filter-heat", "warning", false, ["regeneration", "soot load", "forced regeneration", "static regeneration"], "common practice, no source"),
        new("stored-springs", "warning", true, ["strut", "coil spring", "spring compressor", "top mount", "tailgate strut", "belt tensioner", "leaf spring"], "common practice, no source"),
        new("carbon-monoxide", "danger", true, ["run the engine", "idle the engine", "engine running", "garage", "exhaust leak", "heater"], "public-health advice"),
        new("urea", "notice", false, ["urea", "reductant", "diesel exhaust fluid", "dosing"], "ISO 22241"),
        new("oil-on-skin", "caution", false, ["oil change", "drain the oil", "sump plug", "gearbox oil"], "HSE advice on skin at work"),
        new("road-test", "warning", false, ["road test", "log while driving", "full load", "drive cycle"], "common practice; traffic law"),
        new("wheels-tyres", "warning", false, ["wheel bolt", "torque", "tyre", "wheel spacer"], "common practice, no source"),
        new("solvents", "warning", false, ["brake cleaner", "degreaser", "solvent", "throttle cleaner", "starting spray"], "product label (GHS)"),
        new("lithium", "warning", false, ["lithium", "jump pack", "swollen cell"], "transport rules; common practice"),
        new("unexpected-start", "warning", false, ["remote start", "stop-start", "keyless", "in gear", "crank the engine"], "HSE guidance on keys of electric vehicles"),
        new("ignition-voltage", "warning", false, ["ignition coil", "spark test", "xenon ballast"], "common practice, no source"),
        new("wiring-shorts", "notice", false, ["bridge", "fuse", "jumper wire", "back-probe"], "common practice, no source"),
        new("emission-equipment", "notice", false, ["delete the filter", "blank off", "remap", "gut the catalyst", "bypass the filter"], "US Clean Air Act, section 203"),
    ];

    /// <summary>Cues that call for nothing on their own, each with the reason.</summary>
    public static Dictionary<(string Slug, string Cue), string> TooWide { get; } = new()
    {
        [("diesel-high-pressure", "crack open")] = "plastics crack open too; 'crack open a union' calls for it",
        [("hot-coolant", "hose off")] = "most hoses carry air, vacuum or water for the screen; coolant itself calls for it",
        [("under-vehicle", "lift")] = "one lifts a lid or a needle; jack, stand and ramps call for it",
        [("battery-12v", "charge")] = "charge air; the battery itself calls for it",
        [("battery-12v", "terminal")] = "every connector has terminals; the battery itself calls for it",
        [("petrol-fire", "fuel filter")] = "a diesel has one too; the fuel line beside it calls for it",
        [("brake-hydraulics", "ABS")] = "mostly a lamp or a wheel sensor, with the hydraulics untouched",
        [("friction-dust", "blow out")] = "air filters and intercoolers are blown out; pads, shoes, drums and dust call for it",
        [("carbon-monoxide", "garage")] = "also the workshop one drives to; running the engine calls for it",
        [("carbon-monoxide", "exhaust leak")] = "what is looked for with the engine off, too; running the engine calls for it",
        [("carbon-monoxide", "heater")] = "mostly the cabin heater or a sensor heater; running the engine calls for it",
        [("urea", "dosing")] = "injectors dose fuel; the fluid itself calls for it",
        [("wheels-tyres", "torque")] = "every bolt has one; wheel bolts call for it",
        [("unexpected-start", "in gear")] = "also said of how a fault shows on the road; cranking calls for it",
    };
}
