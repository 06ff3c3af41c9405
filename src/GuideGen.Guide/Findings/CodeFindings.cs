using GuideGen.Guide.Text;

namespace GuideGen.Guide.Findings;

/// <summary>Says why a text is not a possible code.</summary>
public static class CodeFindings
{
    public static Finding NotACode(Located<string> written) =>
        Rules.CodeStructure.At(written.Span, written.Value, Objection(written.Value)).Concerning(written.Value);

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
