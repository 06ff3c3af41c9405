namespace GuideGen.Guide.Yaml;

/// <summary>What the YAML library objects to, in words for people who do not know its grammar.</summary>
static class YamlObjections
{
    /// <summary>The first part that a message contains decides.</summary>
    static readonly (string Part, string Plain)[] Table =
    [
        ("unexpected end of stream", "a quote is not closed"),
        ("invalid mapping", "a colon and a blank stand inside text"),
        ("mapping values are not allowed", "a colon and a blank stand inside text"),
        ("',' or ']'", "a list in brackets is not closed, or a comma is missing"),
        ("',' or '}'", "keys in braces are not closed, or a comma is missing"),
        ("expected key", "this line is indented differently from its neighbours, or a colon is missing"),
        ("could not find expected ':'", "a colon is missing"),
        ("'-' indicator", "a list is indented differently from its neighbours, or a hyphen is missing"),
    ];

    /// <summary>In lower case, without a full stop.</summary>
    public static string Plain(string message)
    {
        foreach (var (part, plain) in Table)
        {
            if (message.Contains(part, StringComparison.OrdinalIgnoreCase)) return plain;
        }

        var words = message.TrimEnd('.', ' ', ',');
        return words.Length == 0 ? "unreadable" : char.ToLowerInvariant(words[0]) + words[1..];
    }
}
