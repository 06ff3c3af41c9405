using System.Text.RegularExpressions;

namespace GuideGen.Site.Drafting;

/// <summary>Writes a value so that YAML reads it back as the same text.</summary>
public static partial class YamlText
{
    /// <summary>In quotes only where it has to be. A list or keys in brackets are taken as they are written.</summary>
    public static string Of(string value) => Plain().IsMatch(value) || IsBracketed(value) ? value : $"\"{value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    static bool IsBracketed(string value) => (value.StartsWith('[') && value.EndsWith(']')) || (value.StartsWith('{') && value.EndsWith('}'));

    // No mark that YAML gives a meaning, and nothing that reads as a comma or a colon inside brackets.
    [GeneratedRegex(@"^[\p{L}\p{Nd}][\p{L}\p{Nd} ./()'_-]*(?<! )$", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();
}
