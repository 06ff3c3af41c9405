using System.Text;

namespace GuideGen.Guide.Pages;

/// <summary>Names of headings as the end of an address: lower case, words joined by hyphens, unique on a page.</summary>
public sealed class Anchors
{
    readonly HashSet<string> used = new(StringComparer.Ordinal);
    readonly Dictionary<string, int> lastNumbers = new(StringComparer.Ordinal);

    public string Next(string heading)
    {
        var name = Of(heading);
        if (used.Add(name)) return name;
        // Counting on from the last one keeps a page of equal headings linear.
        var number = lastNumbers.GetValueOrDefault(name, 1) + 1;
        while (!used.Add($"{name}-{number}")) number++;
        lastNumbers[name] = number;
        return $"{name}-{number}";
    }

    public static string Of(string heading)
    {
        var name = new StringBuilder();
        foreach (var rune in heading.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune)) name.Append(Rune.ToLowerInvariant(rune).ToString());
            else if (name.Length > 0 && name[^1] != '-' && rune.Value is not ('\'' or '’')) name.Append('-');
        }

        return name.ToString().TrimEnd('-') is { Length: > 0 } text ? text : "section";
    }
}
