using System.Text.Json;
using System.Text.Json.Serialization;
using GuideGen.Codes.Reading;
using GuideGen.Testing;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>
/// One text with what must be read in it; the same rows hold for C# and for the browser's script. A find is written
/// "P0299-00:AF repaired [current, lamp-on] @ECM", an answer "stored @7E8: P0299 or P3300 guess incomplete".
/// </summary>
/// <param name="Answers">Null where the row is not about them.</param>
public sealed record ReadingRow(string Text, string? Place, string[] Finds, string[]? Answers, string? Why, string? Source)
{
    static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    [JsonIgnore]
    public ReadingPlace ReadingPlace => Place == "box" ? ReadingPlace.LookUpBox : ReadingPlace.FreeText;

    public static TheoryData<string, int> All => [.. Files.SelectMany(file => Load(file).Select((_, i) => (file, i)))];

    static string[] Files => ["sample-lines", "text-lines", "look-up-box", "raw-answers"];

    public static ReadingRow At(string file, int index) => Load(file)[index];

    static ReadingRow[] Load(string file) =>
        JsonSerializer.Deserialize<ReadingRow[]>(Repository.Read("tests", "GuideGen.Codes.Tests", "Reading", file + ".json"), Options)!;
}
