using System.Collections.Frozen;

namespace GuideGen.Codes.Reading;

/// <summary>Makes characters that look alike equal, one for one, so that every position stays true.</summary>
static class Folding
{
    const string CyrillicAndGreek = "АВСЕОРІавсеоріΑΒΕΟΡΙαβεορι";
    const string TheirLookAlikes = "ABCEOPIABCEOPIABEOPIABEOPI";
    const string Dashes = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFE63";
    const string Blanks = "\t\v\f\u0085\u00A0\u2007\u2009\u202F\u205F\u3000";

    static readonly FrozenDictionary<char, char> Table = CyrillicAndGreek.Zip(TheirLookAlikes)
        .Concat(Dashes.Select(c => (c, '-')))
        .Concat(Blanks.Select(c => (c, ' ')))
        .ToFrozenDictionary(pair => pair.Item1, pair => pair.Item2);

    internal static string Fold(string text) => string.Create(text.Length, text, static (folded, text) =>
    {
        for (var i = 0; i < folded.Length; i++)
            folded[i] = Fold(text[i]);
    });

    static char Fold(char c) => c switch
    {
        >= 'a' and <= 'z' => (char)(c - 0x20),
        >= ' ' and < '\u007F' => c,
        '\r' => '\n',
        // Halves of characters beyond the basic plane: none of them can be part of a code.
        >= '\uD800' and <= '\uDFFF' => '\uFFFD',
        // Full-width forms, as some phone keyboards type them.
        >= '\uFF01' and <= '\uFF5E' => Fold((char)(c - 0xFEE0)),
        _ => Table.GetValueOrDefault(c, c),
    };
}
