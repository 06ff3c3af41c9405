using System.Text.Json;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>What the browser's script reads out of a text, as JSON brings it.</summary>
sealed record ScriptPage(ScriptPage.Find[] Finds, ScriptPage.Answer[] Answers)
{
    public static JsonSerializerOptions Json { get; } = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    /// <summary>The script's word for where a text stands.</summary>
    public static string Place(ReadingPlace place) => place == ReadingPlace.LookUpBox ? "lookUpBox" : "freeText";

    public sealed record Reported(string Code, string? FailureType, string? Status);

    public sealed record Find(
        string Code, string? FailureType, string? Status, int Start, int Length, string Written, string Certainty, string[] Words, string? Module);

    public sealed record Answer(
        string Service, string? Source, Reported[] Codes, Reported[] Other, string Certainty, bool Complete, int[]? Refusal);
}

/// <summary>A code that the script suggests.</summary>
sealed record ScriptSuggestion(string Code, string Slip)
{
    /// <summary>What is known of codes, for the script.</summary>
    public static string Known(Dictionary<string, CodeStanding> known) =>
        JsonSerializer.Serialize(known.ToDictionary(k => k.Key, k => new { assigned = k.Value.IsAssigned, covered = k.Value.IsCovered, cases = k.Value.Cases }));

    /// <summary>As the rows write it.</summary>
    public string Print() => Code + (Slip == "none" ? "" : " " + Slip);
}
