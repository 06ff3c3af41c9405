using System.Text.Json;

namespace GuideGen.Site.Licences;

/// <summary>The terms under which what ships is given.</summary>
public static class LicenceTexts
{
    /// <summary>The terms of GuideGen, whose pages, styles and scripts a site carries.</summary>
    public static string Own { get; } = Read("guidegen.licence.txt");

    /// <summary>The standard text of a licence, as the SPDX licence list has it, with places for year and holder.</summary>
    /// <param name="id">Of a licence that a package of this tool is given under.</param>
    public static string Of(string id)
    {
        using var told = JsonDocument.Parse(Read($"licences/{id}.json"));
        return told.RootElement.GetProperty("licenseText").GetString()!;
    }

    /// <summary>The paragraphs of a text whose lines are cut for a page of paper.</summary>
    public static IEnumerable<string> Paragraphs(string text) => text.ReplaceLineEndings("\n").Trim().Split("\n\n").Select(p => p.Replace('\n', ' '));

    static string Read(string name)
    {
        using var stream = typeof(LicenceTexts).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not in the assembly: name it in GuideGen.Site.csproj");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
