using GuideGen.Codes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Findings;

/// <summary>Says why a text is not a possible code.</summary>
public static class CodeFindings
{
    public static Finding NotACode(Located<string> written) =>
        Rules.CodeStructure.At(written.Span, written.Value, Objection(written.Value), Question(written.Value)).Concerning(written.Value);

    /// <summary>Small letters, and letters that look like digits, are the usual slips.</summary>
    static string Question(string text)
    {
        var likely = text.Length == 0 ? "" : char.ToUpperInvariant(text[0]) + text[1..].ToUpperInvariant().Replace('O', '0').Replace('I', '1').Replace('L', '1').Replace(" ", "", StringComparison.Ordinal);
        return TroubleCode.TryParse(likely, out var code) && !code.IsEmptySlot ? $" Write {code} if that is meant." : "";
    }

    static string Objection(string text) => text switch
    {
        { Length: not 5 } => $"it has {text.Length} characters, not 5",
        _ when !"PCBU".Contains(text[0], StringComparison.OrdinalIgnoreCase) => $"it begins with '{text[0]}', not with P, C, B or U",
        _ when text[1] is < '0' or > '3' => $"its second character is '{text[1]}', not 0 to 3",
        "P0000" => "it stands for 'no code stored'",
        _ when text.Skip(2).FirstOrDefault(c => !char.IsAsciiHexDigit(c)) is var bad && bad != default => $"'{bad}' is not one of 0-9 and A-F",
        _ => "it is not in capital letters",
    };
}
