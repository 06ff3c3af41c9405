using System.Text.Json;
using GuideGen.Codes.Reading;
using GuideGen.Testing;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>What is suggested for a mistyped code where only a handful of codes is known. The same rows hold for the script.</summary>
public sealed record SuggestionRow(string Typed, string[] Want, string[]? Covered, Dictionary<string, int>? Cases, string? Why)
{
    static readonly JsonSerializerOptions Options = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    public static string[] Assigned { get; } = ["P0299", "P2099", "P0121", "U0121"];

    public static TheoryData<int> All => [.. Enumerable.Range(0, Load().Length)];

    public static SuggestionRow At(int index) => Load()[index];

    public CodeStanding StandingOf(string code) =>
        new(Assigned.Contains(code), Covered?.Contains(code) == true, Cases?.GetValueOrDefault(code) ?? 0);

    /// <summary>What is known in the row's world.</summary>
    public Dictionary<string, CodeStanding> Known() =>
        Assigned.Concat(Covered ?? []).Concat(Cases?.Keys ?? Enumerable.Empty<string>()).Distinct().ToDictionary(code => code, StandingOf);

    static SuggestionRow[] Load() =>
        JsonSerializer.Deserialize<SuggestionRow[]>(Repository.Read("tests", "GuideGen.Codes.Tests", "Reading", "suggestions.json"), Options)!;
}
