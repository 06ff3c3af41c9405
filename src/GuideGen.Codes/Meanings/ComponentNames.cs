using System.Text.RegularExpressions;

namespace GuideGen.Codes;

/// <summary>How components are called in the trade, to tell whether two texts can speak of the same one.</summary>
static class ComponentNames
{
    /// <param name="Circle">What it is.</param>
    /// <param name="Kin">Circles that a text about this one may speak of as well: no contradiction between them.</param>
    public sealed record Component(string Circle, string[] Kin, Regex Wording);

    public static readonly Component[] Table =
    [
        Of("oxygen sensor", @"oxygen sensor|O2 sensor|HO2S|lambda|A/F sensor", "fuel mixture", "heater"),
        Of("catalytic converter", @"catal(?:yst|ytic)|\bcats?\b", "NOx and reductant"),
        Of("fuel mixture", @"fuel trim|mixture|\blean\b|\brich\b|air-fuel ratio",
            "oxygen sensor", "fuel supply", "air flow sensor", "injector", "intake"),
        Of("misfire", @"misfir\w*|combustion|ignition fail\w*", "ignition coil", "injector", "fuel supply", "glow plug", "fuel mixture"),
        Of("ignition coil", @"ignition coils?|coil pack|spark plugs?|\bignition \S+ control|ignition \[\]", "misfire"),
        Of("injector", @"\binject(?:ors?|ion|ed)\b", "fuel supply", "fuel mixture", "misfire"),
        Of("fuel supply", @"fuel (?:rail|pressure|pump|volume|filter|regulator|shut|system|delivery|line|composition|quantity)|"
            + "rail pressure|high.pressure pump",
            "injector", "fuel mixture", "misfire", "fuel tank"),
        Of("fuel tank", @"fuel (?:tank|level|cap|filler|gauge)|EVAP|fuel vapour|fuel vapor|purge|charcoal canister",
            "fuel supply", "fuel mixture"),
        Of("air flow sensor", @"\bMAF\b|mass air|air flow sensor|air mass|volume air", "fuel mixture", "intake", "boost"),
        Of("boost", @"boost|turbo\w*|supercharger|wastegate|charge air", "intake", "air flow sensor"),
        Of("intake", @"intake (?:manifold|air|runner)|\bMAP\b|manifold (?:absolute )?pressure|barometric|swirl",
            "boost", "air flow sensor", "throttle and pedal", "fuel mixture"),
        Of("throttle and pedal", @"throttle|pedal|\bTPS\b", "intake", "idle"),
        Of("idle", @"\bidle\b", "throttle and pedal", "intake", "fuel mixture"),
        Of("camshaft or crankshaft", @"\bcam(?:shaft)?\b|\bcrank(?:shaft)?\b|timing chain|timing belt|valve timing|\bVVT\b|rocker arm",
            "intake", "misfire"),
        Of("knock sensor", @"\bknock\b", "misfire"),
        Of("exhaust recirculation", @"\bEGR\b|exhaust (?:gas )?recirculation", "intake"),
        Of("particulate filter", @"particulate|\bDPF\b|\bGPF\b|soot", "exhaust"),
        Of("NOx and reductant", @"\bNOx\b|reductant|\bSCR\b|\bDEF\b|\burea\b|ammonia|\bNH3\b", "catalytic converter", "exhaust"),
        Of("exhaust", @"exhaust (?:gas )?(?:temperature|pressure)|\bEGT\b",
            "particulate filter", "NOx and reductant", "catalytic converter", "exhaust recirculation", "boost"),
        Of("cooling", @"coolant|thermostat|radiator|\bECT\b|\bfan\b|overheat\w*",
            "exhaust recirculation", "boost", "high voltage drive", "air conditioning"),
        Of("engine oil", @"engine oil|oil pressure|oil level", "camshaft or crankshaft"),
        Of("glow plug", @"glow ?plugs?", "misfire"),
        Of("system voltage", @"system voltage|battery|alternator|charging system|generator", "high voltage drive", "starter"),
        Of("starter", @"\bstarter\b", "system voltage", "high voltage drive"),
        Of("transmission", @"transmission|gear ?box|gears?\b|torque converter|shift|clutch|output shaft|input shaft|turbine speed",
            "high voltage drive", "wheel speed", "throttle and pedal", "four-wheel drive"),
        Of("four-wheel drive", @"four-wheel|all-wheel|transfer case|\bAWD\b|\b4WD\b", "transmission"),
        Of("wheel speed", @"wheel speed|tone wheel|vehicle speed|\bABS\b", "transmission", "brakes"),
        Of("brakes", @"\bbrakes?\b|parking brake|master cylinder", "wheel speed", "throttle and pedal", "fuel mixture"),
        Of("steering", @"steering", "wheel speed"),
        Of("restraints", @"airbags?|seat ?belts?|pretensioners?|restraints?|occupant", "seat"),
        Of("seat", @"\bseats?\b", "restraints"),
        Of("air conditioning", @"air conditioning|\bA/C\b|refrigerant|climate|evaporator", "cooling", "high voltage drive"),
        Of("high voltage drive", @"hybrid|traction battery|inverter|drive motor|high.voltage|charger|DC/DC|DC/AC",
            "system voltage", "cooling", "transmission", "air conditioning"),
        Of("cruise control", @"cruise|speed control", "brakes", "wheel speed", "throttle and pedal"),
        Of("power steering", @"power steering", "steering"),
        Of("ambient air", @"ambient|outside (?:air )?temperature|humidity", "intake"),
    ];

    static Component Of(string circle, string wording, params string[] kin) =>
        new(circle, kin, new Regex(wording, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant));
}
