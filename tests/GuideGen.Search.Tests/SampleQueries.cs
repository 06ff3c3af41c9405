using System.Collections.Immutable;

namespace GuideGen.Search.Tests;

/// <summary>Queries of every kind lunr's query language has, over the words of <see cref="SampleTexts"/>.</summary>
static class SampleQueries
{
    static readonly string[] Words =
    [
        "brake", "brakes", "braking", "coolant", "glow", "glowing", "injection", "turbos", "valve", "sensor", "leaking", "smoke", "idling", "battery",
        "alternator", "clutch", "gears", "steering", "rattle", "vibration", "ignition", "thermal", "the", "zzz", "12", "1.5", "p0420", "constructor", "proto",
    ];

    static readonly string[] Fields = ["name", "codes", "summary", "body"];

    public static readonly ImmutableArray<Func<Random, string>> Exact =
    [
        r => Word(r),
        r => $"{Word(r)} {Word(r)}",
        r => $"{Word(r)} {Word(r)} {Word(r)}",
        r => $"{Fields[r.Next(4)]}:{Word(r)}",
        r => $"{Fields[r.Next(4)]}:{Word(r)} {Word(r)}",
        r => $"+{Word(r)} {Word(r)}",
        r => $"+{Word(r)} +{Word(r)}",
        r => $"{Word(r)} -{Word(r)}",
        r => $"-{Word(r)}",
        r => $"-{Word(r)} -{Fields[r.Next(4)]}:{Word(r)}",
        r => $"+{Word(r)} -{Word(r)} {Word(r)}",
        r => $"+{Fields[r.Next(4)]}:{Word(r)} {Word(r)}",
        r => $"{Start(r)}*",
        r => $"{Word(r)} {Start(r)}*",
        r => $"+{Start(r)}* -{Word(r)}",
        r => $"{Fields[r.Next(4)]}:{Start(r)}*",
        r => $"{Word(r)}^{1 + r.Next(12)} {Word(r)}",
        r => $"{Word(r)}-{Word(r)}",
        r => $"p{r.Next(4)}*",
        r => $"-{Start(r)}* {Word(r)}",
    ];

    public static readonly ImmutableArray<Func<Random, string>> Loose =
    [
        r => $"*{End(r)}",
        r => $"{Start(r)[..1]}*{End(r)}",
        r => $"{Word(r)}~1",
        r => $"{Word(r)}~2",
        r => $"{Fields[r.Next(4)]}:{Word(r)}~1^3 {Word(r)}",
        r => $"+{Word(r)}~1 -{Word(r)}",
        r => $"{Word(r)}:{Word(r)}",
        r => $"{Word(r)} ~ {Word(r)}",
    ];

    public static ImmutableArray<string> All(int count) => Distinct([.. Exact, .. Loose], count);

    public static ImmutableArray<string> Distinct(ImmutableArray<Func<Random, string>> kinds, int count)
    {
        var random = new Random(42);
        var queries = new SortedSet<string>(StringComparer.Ordinal);
        for (var i = 0; queries.Count < count; i++) queries.Add(kinds[i % kinds.Length](random));
        return [.. queries];
    }

    static string Word(Random random) => Words[random.Next(Words.Length)];

    static string End(Random random)
    {
        var word = Word(random);
        return word[Math.Max(0, word.Length - 3)..];
    }

    static string Start(Random random)
    {
        var word = Word(random);
        return word[..Math.Min(word.Length, 2 + random.Next(3))];
    }
}
