using System.Text.Json;

namespace GuideGen.Testing;

/// <summary>What in a text could lead to a person; the tool and the page on which owners write a case find the same.</summary>
public sealed record PersonalRow(string Text, IReadOnlyList<PersonalRow.Telling> Found)
{
    /// <param name="Kind">mail, vin, phone, plate or name.</param>
    /// <param name="Text">As it is written.</param>
    public sealed record Telling(string Kind, string Text);

    public static IReadOnlyList<PersonalRow> All { get; } = JsonSerializer.Deserialize<List<PersonalRow>>(
        Repository.Read("tests", "GuideGen.Testing", "Vectors", "personal-data.json"), JsonSerializerOptions.Web)!;
}
