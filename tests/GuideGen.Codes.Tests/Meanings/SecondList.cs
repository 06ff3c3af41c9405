using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace GuideGen.Codes.Tests.Meanings;

/// <param name="Condition">A word of our own for what the second list says.</param>
/// <param name="Part">The part it names; may be empty.</param>
/// <param name="Sides">Banks, sensors and cylinders it names, as in "bank 1, sensor 2"; may be empty.</param>
sealed record SecondList(TroubleCode Code, string Condition, string Part, string Sides)
{
    public static readonly SecondList[] Rows =
    [
        .. DataFile.Rows("second-list.tsv").Skip(1)
            .Select(r => new SecondList(TroubleCode.Parse(r[0]), r[1], r.ElementAtOrDefault(2) ?? "", r.ElementAtOrDefault(3) ?? "")),
    ];

    // What this list calls by one word, the newer one may split or narrow.
    static readonly FrozenDictionary<string, string> Conditions = new Dictionary<string, string>
    {
        ["open"] = "open|open-or-fault",
        ["performance"] = "performance|performance-too-low|over-advanced-or-performance|"
            + "performance-stuck-off|performance-stuck-open|low-or-performance|mechanical|switches-off-early|switches-off-late|below-threshold",
        ["stuck-off"] = "stuck-off|performance-stuck-off",
        ["stuck-open"] = "stuck-open|performance-stuck-open",
        ["stuck"] = "stuck|biased-rich|biased-lean",
        ["too-low"] = "too-low|learn-limit|control-limit|lower-than-expected",
        ["too-high"] = "too-high|learn-limit|control-limit|higher-than-expected",
        ["not-learned"] = "not-learned|not-learned-or-programmed",
        ["low"] = "low|low-voltage|underspeed",
        ["high"] = "high|high-voltage|overspeed",
        ["range"] = "range|performance-stuck-off",
        ["leak"] = "leak|very-small-leak|small-leak|large-leak|leak-or-restricted",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    static readonly FrozenDictionary<string, string> Parts = new Dictionary<string, string>
    {
        ["catalyst"] = "cataly",
        ["boost"] = "boost|turbo",
        ["airbag or restraint"] = "restraint|occupant",
        ["lighting"] = "light|lamp",
        ["shaft speed"] = "shaft speed|turbine speed",
        ["cruise"] = "cruise|distance range sensor",
        ["brake"] = "brake|ABS",
        ["EGR"] = "EGR",
        ["EVAP"] = "EVAP|fuel vapour",
        ["fuel pressure"] = "fuel.*pressure|pressure.*fuel",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <returns>Empty if all agrees.</returns>
    public string Difference(CodeEntry entry)
    {
        if (!Conditions.GetValueOrDefault(Condition, Condition).Split('|').Contains(entry.Condition.Key))
            return $"{Condition} for {entry.Condition.Key}";
        if (Part.Length > 0 && !Regex.IsMatch(entry.Meaning, Parts.GetValueOrDefault(Part, Part), RegexOptions.IgnoreCase))
            return $"{Part} for {entry.Meaning}";
        var ours = entry.Sides.Where(s => s.Kind is SideKind.Bank or SideKind.Cylinder or SideKind.Sensor or SideKind.Number)
            .Select(s => $"{(s.Kind == SideKind.Number ? SideKind.Sensor : s.Kind)} {s.Value}".ToLowerInvariant()).ToHashSet();
        var theirs = Sides.Split(", ", StringSplitOptions.RemoveEmptyEntries);
        return theirs.All(s => ours.Any(o => o.StartsWith(s, StringComparison.Ordinal))) ? "" : $"{Sides} for {string.Join(", ", ours)}";
    }
}
