namespace GuideGen.Guide.Findings;

/// <summary>Text of an author made fit for a terminal: what would move the cursor or change colours becomes visible.</summary>
public static class Printable
{
    const char Replacement = '\uFFFD';

    /// <summary>In one line, of the same length; tabs stay.</summary>
    public static string Line(ReadOnlySpan<char> text) => string.Create(text.Length, text, static (line, text) =>
    {
        for (var i = 0; i < text.Length; i++) line[i] = Character(text[i]);
    });

    static char Character(char c) => c switch
    {
        '\t' => c,
        '\r' or '\n' => ' ',
        _ => char.IsControl(c) ? Replacement : c,
    };
}
