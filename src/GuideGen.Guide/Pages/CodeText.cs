using System.Text.RegularExpressions;
using GuideGen.Codes;

namespace GuideGen.Guide.Pages;

/// <summary>Something in running text that is a code, or was meant to be one.</summary>
/// <param name="Code">Null if it is not a possible code.</param>
public readonly record struct WrittenCode(TroubleCode? Code, int Start, int Length);

/// <summary>Finds codes that are written out in running text: five characters in capital letters, standing alone.</summary>
public static partial class CodeText
{
    /// <returns>In the order they stand; places count from the start of the text.</returns>
    public static IReadOnlyList<WrittenCode> In(ReadOnlySpan<char> text)
    {
        // Most sentences have no digit, which is seen many times sooner.
        if (!text.ContainsAnyInRange('0', '9')) return [];
        List<WrittenCode>? found = null;
        foreach (var match in Candidates().EnumerateMatches(text))
        {
            var isCode = TroubleCode.TryParse(text.Slice(match.Index, match.Length), out var code);
            (found ??= []).Add(new WrittenCode(isCode ? code : null, match.Index, match.Length));
        }

        return found ?? (IReadOnlyList<WrittenCode>)[];
    }

    // A letter of a code, a digit, and three more characters of which the first is a digit or a hexadecimal letter:
    // wide enough to catch P4299 and P02G9, narrow enough to leave B20 bolts and names alone.
    [GeneratedRegex("(?<![A-Za-z0-9])[PCBU][0-9][0-9A-F][0-9A-Z][0-9A-Z](?![A-Za-z0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Candidates();
}
