using System.Globalization;
using System.Text;

namespace GuideGen.Search.Words;

/// <summary>
/// Lower case as a browser writes it (ECMA-262 String.prototype.toLowerCase, that is Unicode's full mapping without a
/// language). It differs from the invariant culture in two places: capital I with a dot becomes two characters, and a
/// capital sigma at the end of a word takes its final form.
/// </summary>
static class LowerCase
{
    const char DottedI = '\u0130', Sigma = '\u03A3', FinalSigma = '\u03C2';

    public static string Of(string text)
    {
        if (text.AsSpan().IndexOfAny(DottedI, Sigma) < 0) return text.ToLowerInvariant();
        var result = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
            result.Append(text[i] == DottedI ? "i\u0307" : text[i] == Sigma && IsFinal(text, i) ? FinalSigma.ToString() : text[i].ToString());
        return result.ToString().ToLowerInvariant();
    }

    /// <summary>Unicode Standard, table 3-17, Final_Sigma: a cased letter before it and none after it, marks and points between not counted.</summary>
    static bool IsFinal(string text, int at)
    {
        var before = at - 1;
        while (before >= 0 && IsIgnorable(text, before)) before--;
        var after = at + 1;
        while (after < text.Length && IsIgnorable(text, after)) after++;
        return before >= 0 && IsCased(text, before) && !(after < text.Length && IsCased(text, after));
    }

    static bool IsCased(string text, int at) => CharUnicodeInfo.GetUnicodeCategory(text, at)
        is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter;

    static bool IsIgnorable(string text, int at) =>
        "'.:\u00B7\u2018\u2019\u2024\u2027".Contains(text[at], StringComparison.Ordinal)
        || CharUnicodeInfo.GetUnicodeCategory(text, at)
            is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format
            or UnicodeCategory.ModifierLetter or UnicodeCategory.ModifierSymbol;
}
