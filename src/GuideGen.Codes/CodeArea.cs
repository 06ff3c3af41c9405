using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>
/// The part of the vehicle that a code's first three characters point to. Only a hint: SAE J2012 no longer groups
/// codes by area since 2016, and makers need not follow it in their own codes.
/// </summary>
/// <param name="Key">Stable, for translations and style sheets.</param>
/// <param name="Name">In English, fit for the middle of a sentence.</param>
public sealed record CodeArea(string Key, string Name)
{
    static readonly CodeArea Powertrain = new("powertrain", "powertrain");
    static readonly CodeArea Chassis = new("chassis", "chassis");
    static readonly CodeArea Body = new("body", "body");
    static readonly CodeArea Network = new("network", "network and control modules");
    static readonly CodeArea FuelAir = new("fuel-air", "fuel and air metering");
    static readonly CodeArea FuelAirEmissions = new("fuel-air-emissions", "fuel and air metering, emission control");
    static readonly CodeArea Injectors = new("injectors", "fuel and air metering, injectors");
    static readonly CodeArea Ignition = new("ignition", "ignition or misfire");
    static readonly CodeArea Emissions = new("emissions", "emission control");
    static readonly CodeArea SpeedIdle = new("speed-idle", "vehicle speed, idle and auxiliary inputs");
    static readonly CodeArea AuxiliaryInputs = new("auxiliary-inputs", "auxiliary inputs");
    static readonly CodeArea Computer = new("computer", "control unit and its auxiliary outputs");
    static readonly CodeArea Transmission = new("transmission", "transmission");
    static readonly CodeArea Electric = new("electric-drive", "hybrid or electric drive");
    static readonly CodeArea CylinderOff = new("cylinder-deactivation", "cylinder deactivation");
    static readonly CodeArea BusHardware = new("bus-hardware", "data bus wiring");
    static readonly CodeArea LostContact = new("lost-contact", "lost contact with a control unit");
    static readonly CodeArea Software = new("software", "software that does not match");
    static readonly CodeArea BadData = new("bad-data", "bad data from a control unit");
    static readonly CodeArea ModuleSupply = new("module-supply", "a control unit itself and its supply");
    static readonly CodeArea Hydrogen = new("hydrogen", "hydrogen system and interlocks");
    static readonly CodeArea Restraints = new("restraints", "airbags, belts and seats");
    static readonly CodeArea BodyElectrics = new("body-electrics", "cameras, washers and outlets");
    static readonly CodeArea Brakes = new("brakes", "brakes, wheel speed, drive line and steering");

    // First block, last block, area. The maker's P1 and P30 to P33 are meant to follow the digits of P0.
    static readonly (string First, string Last, CodeArea Area)[] Blocks =
    [
        ("P00", "P00", FuelAirEmissions), ("P01", "P01", FuelAir), ("P02", "P02", Injectors), ("P03", "P03", Ignition),
        ("P04", "P04", Emissions), ("P05", "P05", SpeedIdle), ("P06", "P06", Computer), ("P07", "P09", Transmission),
        ("P0A", "P0E", Electric),
        ("P10", "P10", FuelAirEmissions), ("P11", "P11", FuelAir), ("P12", "P12", Injectors), ("P13", "P13", Ignition),
        ("P14", "P14", Emissions), ("P15", "P15", SpeedIdle), ("P16", "P16", Computer), ("P17", "P19", Transmission),
        ("P20", "P22", FuelAirEmissions), ("P23", "P23", Ignition), ("P24", "P24", Emissions),
        ("P25", "P25", AuxiliaryInputs), ("P26", "P26", Computer), ("P27", "P28", Transmission),
        ("P30", "P30", FuelAirEmissions), ("P31", "P31", FuelAir), ("P32", "P32", Injectors), ("P33", "P33", Ignition),
        ("P34", "P34", CylinderOff),
        ("U00", "U00", BusHardware), ("U01", "U02", LostContact), ("U03", "U03", Software), ("U04", "U05", BadData),
        ("U06", "U06", LostContact), ("U30", "U30", ModuleSupply), ("U35", "U35", Hydrogen),
        ("B00", "B00", Restraints), ("B01", "B01", BodyElectrics),
        ("C00", "C00", Brakes), ("C05", "C06", Brakes),
    ];

    static readonly ImmutableArray<CodeArea> ByHighByte = Spread();

    internal static CodeArea Of(TroubleCode code) => ByHighByte[code.High];

    static ImmutableArray<CodeArea> Spread()
    {
        CodeArea[] letters = [Powertrain, Chassis, Body, Network];
        var areas = new CodeArea[256];
        for (var high = 0; high < areas.Length; high++)
            areas[high] = letters[high >> 6];
        foreach (var (first, last, area) in Blocks)
            areas.AsSpan(HighByte(first), HighByte(last) - HighByte(first) + 1).Fill(area);
        return [.. areas];
    }

    static int HighByte(string block) => TroubleCode.Parse(block + "00").High;
}
