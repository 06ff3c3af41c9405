using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace GuideGen.Codes.Tests.Meanings;

/// <summary>Which words of the open list and of the catalogue name the same thing. Trade usage, no published source.</summary>
static class Vocabulary
{
    static readonly (string Pattern, string Words)[] Wordings =
    [
        (@"HO2S Sensor|HO2S", "heated oxygen sensor"), (@"\bO2\b", "oxygen"), (@"Hybrid/EV Battery", "traction battery"),
        (@"Hybrid/EV|hybrid or electric( drive)?(?= (system|discharge))|hybrid or electric", "hybridelectric"), (@"drive electronics", "electronics"),
        (@"Electric/Auxiliary|electric \(auxiliary\)", "electric auxiliary"), (@"A/C\b", "air conditioning"), (@"driving sensor \(A/V\)|A/V Sensor", "drivingsensor"),
        (@"ECM/PCM", "engine control module ecmpcm"), (@"\(ecmpcm\)|\(PCM\)|\bPCM\b", "engine control module ecmpcm"), (@"\bECM\b", "engine control module ecmpcm"),
        (@"TCM\b", "transmission control module tcm"), (@"\bEGR\b|exhaust gas recirculation", "egr"), (@"EVAP fuel vapour system|EVAP System|Evaporative Emission System", "evapsystem"),
        (@"EVAP fuel vapou?r|EVAP(?= purge)|^fuel vapour(?= purge| temp)", "fuelvapour"), (@"fuel vapour", "fuelvapour"), (@"secondary air system|AIR System", "airsystem"),
        (@"Manifold Absolute Pressure|intake manifold pressure|\bMAP\b|intake manifold(?= or barometric)", "manifoldpressure"), (@"\bMAF\b", "mass air flow"),
        (@"\bPCV\b|crankcase ventilation \(PCV\)", "pcv"), (@"power take-off \(PTO\)|\bPTO\b", "pto"), (@"\bMIL\b|engine warning lamp", "mil"),
        (@"\bVSS\b", "vehicle speed"), (@"vehicle identification number|\bVIN\b", "vin"), (@"4WD/AWD|Four Wheel Drive \(4WD\)|four-wheel drive", "fourwheeldrive"),
        (@"\bTCS\b|traction control \(tcs\)", "tractioncontrol"), (@"Anti-Lock Brake System \(ABS\)", "abs"), (@"stop lamp|brake light", "brakelight"),
        (@"engine hood|bonnet", "bonnet"), (@"fuel fill door|fuel filler flap", "fuelfillerflap"), (@"HC Adsorption Catalyst|hydrocarbon trap catalyst", "hctrap"),
        (@"Direct Ozone Reduction|ozone-reducing", "ozonereducing"), (@"Active Grille Air Shutter|radiator grille shutter", "grilleshutter"),
        (@"Active Air Dam|movable front air dam", "airdam"), (@"Active Aerodynamic Feature|movable aerodynamic part", "aeropart"),
        (@"Active Radiator Air Flow|radiator air flow", "radiatorairflow"), (@"L[ -]Terminal|terminal \(l\)", "terminal"), (@"Field/F Terminal|field terminal \(f\)", "field terminal"),
        (@"Knock/Combustion Vibration|knock sensor \(combustion vibration\)|knock \(combustion vibration\)", "knockvibration"), (@"knockvibration sensor", "knockvibration"),
        (@"HVAC|heating and air conditioning", "hvac"), (@"Global Positioning System|satellite positioning", "satpos"), (@"Instrument Panel Cluster( \(IPC\))?( Control Module)?|instrument cluster \(ipc\)", "instrumentcluster"),
        (@"restraints? (system )?(?=sensor|control|disable|malf)", "restraintsystem "), (@"Restraints Occupant Classification System|occupant classification system", "occupantclass"),
        (@"V2X|vehicle-to-surroundings radio \(v2x\)", "v2x"), (@"\bRPM\b|speed \(rpm\)", "speedrpm"), (@"Multiple Sensor|several sensors", "severalsensors"),
        (@"Post Catalyst|after-catalyst", "aftercatalyst"), (@"Engine Speed \(rpm\)", "engine speedrpm"), (@"PWM|pulse-width signal", "pulsewidth"), (@"Auto Shift Manual|automated manual gearbox", "automanual"),
        (@"ammonia sensor \(NH3\)|NH3 sensor", "ammonia sensor"), (@"Generator|alternator \(generator\)", "generator"), (@"A/D Processing|analogue to digital conversion", "adconversion"), (@"U-V-W", "uvw"), (@"X-Y-Z", "xyz"),
        (@"Yaw Rate/Longitude|yaw rate and longitudinal", "yaw rate longitudinal"), (@"Feedgas|feed gas", "feedgas"), (@"Air Cutoff|air cut-off", "aircutoff"), (@"Shutoff|shut-off", "shutoff"),
        (@"LF\b", "left front"), (@"wiring|\(-\)", "minus"), (@"\(\+\)|\+", "plus"), (@"Gear (\d)(st|nd|rd|th)?", "gear $1"), (@"(\d)-(\d) shift", "$1 to $2 shift"),
        (@"contribution/balance|power contribution and balance", "contributionbalance"), (@"center", "centre"), (@"Air/Fuel", "air-fuel"), (@"IMT", "imt"), (@"Starter ?/ ?Generator", "starter generator"),
        (@"or single sensor", "orsinglesensor"), (@"\bsystem(?= too| bank|$)", "system"), (@"Pre- Catalyst", "pre-catalyst"),
        (@"Circuit Driver|driver stage", "driver"), (@"fuel mixture", "system"), (@"- Forced Limited Power", "power limited"), (@"- Forced Engine Shutdown", "engine shut down"),
        (@"- Forced Idle", "held at idle"), (@"- Forced Limited RPM|- Forced Limited speedrpm", "engine speed limited"), (@"- Forced Traction Control Disable", "tractioncontrol switched off"),
        (@"traction control switched off", "tractioncontrol switched off"), (@"knockvibration( sensor)? threshold", "knockvibration signal"), (@"Imbalance - Adjustment\s+During Balance", "balance adjustment"),
        (@"- (Ash|Soot) Accumulation Too High", "$1 build up too high"), (@"AFCM", "alternative fuel control module"), (@"catalytic converter", "catalyst"), (@"- (Ash|Soot) Accumulation", "$1 build up"), (@"Random/Multiple Cylinder|in several or changing cylinders", "randommultiple"),
    ];

    /// <summary>Applied to both texts, in order.</summary>
    public static readonly (Regex Pattern, string Words)[] Phrases =
        [.. Wordings.Select(w => (new Regex(w.Pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant), w.Words))];

    public static readonly FrozenDictionary<string, string> Spelling = new Dictionary<string, string>
    {
        ["tire"] = "tyre", ["leveling"] = "levelling", ["windshield"] = "windscreen", ["vapor"] = "vapour", ["vaporizer"] = "vaporiser", ["stabilizer"] = "stabiliser",
        ["stabilization"] = "stabilisation", ["immobilizer"] = "immobiliser", ["sulfur"] = "sulphur", ["fueling"] = "fuelling", ["moveable"] = "movable", ["catalyst"] = "catalyst",
        ["catalytic"] = "catalyst", ["converter"] = "converter", ["modules"] = "module", ["signals"] = "signal", ["sensors"] = "sensor", ["valves"] = "valve", ["cylinders"] = "cylinder",
        ["lines"] = "line", ["banks"] = "bank", ["pulses"] = "pulse", ["synchronization"] = "synchronisation", ["relays"] = "relay", ["anticipate"] = "anticipation", ["controls"] = "control",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Words that join and carry nothing.</summary>
    public static readonly FrozenSet<string> Small = new[] { "or", "and", "of", "in", "to", "the", "detected", "for", "with", "against", "from", "on" }.ToFrozenSet(StringComparer.Ordinal);
}
