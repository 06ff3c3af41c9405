using System.Text.RegularExpressions;

namespace GuideGen.Codes;

/// <summary>Pairs of conditions that cannot both be true, and how authors word each side of the pair.</summary>
static partial class Opposites
{
    /// <param name="Keys">Conditions of the catalogue that stand on this side.</param>
    /// <param name="Wording">How a text says it.</param>
    /// <param name="Circumstance">A circumstance that puts the entry on this side as well ("at its limit, pressure too low").</param>
    public sealed record Half(string Name, string[] Keys, Regex Wording, string Circumstance = "-")
    {
        public bool Holds(CodeEntry entry) => Keys.Contains(entry.Condition.Key)
            || entry.Sides.Any(s => s.Kind == SideKind.Circumstance && s.Value.EndsWith(Circumstance, StringComparison.Ordinal));
    }

    public sealed record Pair(ContradictionKind Kind, bool? InCircuit, Half One, Half Other);

    static readonly string[] Low = ["low", "low-voltage"];
    static readonly string[] High = ["high", "high-voltage"];

    /// <summary>The first pair that has the entry's condition on one side and the entry's kind of place.</summary>
    public static readonly Pair[] Table =
    [
        // On a wire only the voltage or signal counts: a cold reading may well be a high voltage.
        new(ContradictionKind.Level, true, new("low", Low, SignalLow()), new("high", High, SignalHigh())),
        new(ContradictionKind.Level, false, new("low", [.. Low, "too-low", "lower-than-expected", "underboost", "underspeed", "flow-too-low",
            "no-flow", "stuck-low", "biased-low"], QuantityLow(), "too low"),
            new("high", [.. High, "too-high", "higher-than-expected", "overboost", "overspeed", "flow-too-high", "over-temperature", "driver-overload",
                "stuck-high", "biased-high"], QuantityHigh(), "too high")),
        new(ContradictionKind.Position, null, new("stuck open", ["stuck-open", "performance-stuck-open", "stuck-or-open"], StuckOpen()),
            new("stuck closed", ["stuck-closed"], StuckClosed())),
        new(ContradictionKind.Position, null, new("stuck on", ["stuck-on", "performance-stuck-on"], StuckOn()),
            new("stuck off", ["stuck-off", "performance-stuck-off"], StuckOff())),
        new(ContradictionKind.Position, null, new("stuck engaged", ["stuck-engaged"], StuckEngaged()),
            new("stuck disengaged", ["stuck-disengaged", "performance-stuck-disengaged"], StuckDisengaged())),
        new(ContradictionKind.Mixture, null, new("too lean", ["too-lean", "biased-lean"], Lean()), new("too rich", ["too-rich", "biased-rich"], Rich())),
        new(ContradictionKind.Timing, null, new("advanced", ["over-advanced", "over-advanced-or-performance"], Advanced()),
            new("retarded", ["over-retarded"], Retarded())),
        new(ContradictionKind.Timing, null, new("too short", ["too-short"], Short()), new("too long", ["too-long"], Long())),
        new(ContradictionKind.Timing, null, new("too early", ["switches-off-early"], Early()), new("too late", ["switches-off-late"], Late())),
        new(ContradictionKind.Wiring, null, new("short to ground", ["short-to-ground"], ToGround()),
            new("short to supply", ["short-to-supply"], ToSupply())),
        new(ContradictionKind.Wiring, null, new("open circuit", ["open"], OpenCircuit()),
            new("short circuit", ["short", "short-to-ground", "short-to-supply", "short-to-heater"], ShortCircuit())),
    ];

    const string Signal = @"(?:circuit|signal|voltage|input|output)";
    const string Filler = @"(?:\s+(?:is|was|reads|stays|stayed|remains|too|very|continuously|permanently|constantly))*\s+";
    const string Opened = @"(?:stuck|jammed|seized|hangs?|hung|sticks|sticking|stays?|remains?)(?:\s+or\s+\w+)?\s+";

    [GeneratedRegex(Signal + Filler + @"low\b|\blow\s+" + Signal, RegexOptions.IgnoreCase)]
    private static partial Regex SignalLow();

    [GeneratedRegex(Signal + Filler + @"high\b|\bhigh\s+" + Signal, RegexOptions.IgnoreCase)]
    private static partial Regex SignalHigh();

    [GeneratedRegex(@"\b(?:low|lower|insufficient|too little|too slow(?:ly)?|under-?\s?boost\w*|under-?\s?speed\w*|too cold)\b", RegexOptions.IgnoreCase)]
    private static partial Regex QuantityLow();

    [GeneratedRegex(@"\b(?:high|higher|excessive|too much|too fast|too hot|over-?\s?boost\w*|over-?\s?speed\w*|over-?\s?temperature|over-?heat\w*)\b", RegexOptions.IgnoreCase)]
    private static partial Regex QuantityHigh();

    [GeneratedRegex(@"\b" + Opened + @"open\b", RegexOptions.IgnoreCase)]
    private static partial Regex StuckOpen();

    [GeneratedRegex(@"\b" + Opened + @"(?:closed?|shut)\b", RegexOptions.IgnoreCase)]
    private static partial Regex StuckClosed();

    [GeneratedRegex(@"\b" + Opened + @"(?:on|energised|energized)\b", RegexOptions.IgnoreCase)]
    private static partial Regex StuckOn();

    [GeneratedRegex(@"\b" + Opened + @"off\b", RegexOptions.IgnoreCase)]
    private static partial Regex StuckOff();

    [GeneratedRegex(@"\b" + Opened + @"engaged\b", RegexOptions.IgnoreCase)]
    private static partial Regex StuckEngaged();

    [GeneratedRegex(@"\b" + Opened + @"(?:disengaged|apart)\b", RegexOptions.IgnoreCase)]
    private static partial Regex StuckDisengaged();

    [GeneratedRegex(@"\b(?:lean|too little fuel)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Lean();

    [GeneratedRegex(@"\b(?:rich|too much fuel)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Rich();

    [GeneratedRegex(@"\badvanced\b|\btoo early\b", RegexOptions.IgnoreCase)]
    private static partial Regex Advanced();

    [GeneratedRegex(@"\bretarded\b|\btoo late\b", RegexOptions.IgnoreCase)]
    private static partial Regex Retarded();

    [GeneratedRegex(@"\btoo short\b", RegexOptions.IgnoreCase)]
    private static partial Regex Short();

    [GeneratedRegex(@"\btoo long\b", RegexOptions.IgnoreCase)]
    private static partial Regex Long();

    [GeneratedRegex(@"\btoo (?:early|soon)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Early();

    [GeneratedRegex(@"\btoo late\b", RegexOptions.IgnoreCase)]
    private static partial Regex Late();

    [GeneratedRegex(@"\bto (?:ground|earth|mass|chassis)\b", RegexOptions.IgnoreCase)]
    private static partial Regex ToGround();

    [GeneratedRegex(@"\bto (?:battery|supply|plus|positive|12 ?v)\b", RegexOptions.IgnoreCase)]
    private static partial Regex ToSupply();

    [GeneratedRegex(@"\b(?:open|broken wire|interrupted|unplugged)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OpenCircuit();

    [GeneratedRegex(@"\bshort(?:ed|s)?(?:\s+circuit)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex ShortCircuit();
}
