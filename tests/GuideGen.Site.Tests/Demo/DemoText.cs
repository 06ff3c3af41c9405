using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Demo;

/// <summary>A number in running text, or the range "low to high".</summary>
readonly record struct Quoted(double Low, double High);

/// <summary>The demo guide as a reader meets it: its readings, and its prose without link addresses.</summary>
static partial class DemoText
{
    /// <summary>How prose writes a unit of the table, where it does not write it as the table does.</summary>
    static readonly ImmutableDictionary<string, string> Spellings = new Dictionary<string, string>
    {
        ["%"] = "(?:%|per cent)",
        ["degC"] = "°C",
    }.ToImmutableDictionary();

    public static GuideContent Guide { get; } = GuideLoader.Load(Guides.Open(Guides.Demo)).Guide;

    /// <summary>By "folder/slug".</summary>
    public static ImmutableSortedDictionary<string, string> Pages { get; } = Guide.Entries
        .Where(e => e.Origin.Source.Path.EndsWith(".md", StringComparison.Ordinal))
        .ToImmutableSortedDictionary(e => e.Origin.Source.Path["content/".Length..^".md".Length], Prose);

    public static IEnumerable<(string Check, Reading Reading)> Readings =>
        from check in Guide.Checks.All from reading in check.Readings select (check.Origin.Slug, reading);

    /// <param name="place">"check > reading".</param>
    public static Reading ReadingAt(string place)
    {
        var parts = place.Split(" > ");
        return Readings.Single(r => r.Check == parts[0] && r.Reading.Name.Value == parts[1]).Reading;
    }

    public static IEnumerable<string> SentencesOf(string prose) => SentenceEnd().Split(prose);

    /// <summary>Every number or range before a unit. Thousands may be parted by commas.</summary>
    public static ImmutableArray<Quoted> Numbers(string text, string unit)
    {
        const string number = @"(?<![\d.])(-?\d[\d,]*(?:\.\d+)?)";
        var spelling = Spellings.GetValueOrDefault(unit, Regex.Escape(unit) + @"(?![\w/])");
        return [.. Regex.Matches(text, $@"(?:{number} to )?{number} ?{spelling}").Select(ToQuoted)];
    }

    static Quoted ToQuoted(Match match)
    {
        var last = Parse(match.Groups[2].Value);
        return new(match.Groups[1].Success ? Parse(match.Groups[1].Value) : last, last);
    }

    static double Parse(string number) => double.Parse(number, NumberStyles.Number, CultureInfo.InvariantCulture);

    static string Prose(IGuideEntry entry)
    {
        var body = entry.Origin.Source.Text[entry.Origin.Body.Start..];
        return Space().Replace(Link().Replace(body, "$1"), " ");
    }

    [GeneratedRegex(@"!?\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"(?<=[.?!;:])\s")]
    private static partial Regex SentenceEnd();
}
