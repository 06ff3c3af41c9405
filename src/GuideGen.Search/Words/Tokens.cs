using System.Buffers;

namespace GuideGen.Search.Words;

/// <summary>How lunr.js cuts text: at white space and hyphens; then all but ASCII letters, digits and _ falls off both ends.</summary>
static class Tokens
{
    // ECMA-262 WhiteSpace and LineTerminator (what \s means in a script), and the hyphen.
    static readonly SearchValues<char> Separators = SearchValues.Create(
        "\t\n\v\f\r -\u00A0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200A\u2028\u2029\u202F\u205F\u3000\uFEFF");

    /// <summary>Takes the next token off the front of <paramref name="rest"/>; empty when there is none left.</summary>
    public static ReadOnlySpan<char> Next(ref ReadOnlySpan<char> rest)
    {
        var start = rest.IndexOfAnyExcept(Separators);
        if (start < 0) return rest = [];
        rest = rest[start..];
        var length = rest.IndexOfAny(Separators);
        var token = length < 0 ? rest : rest[..length];
        rest = rest[token.Length..];
        return token;
    }

    /// <summary>May be empty: an ampersand alone trims to nothing, and lunr.js keeps that as a term.</summary>
    public static ReadOnlySpan<char> Trim(ReadOnlySpan<char> token)
    {
        while (token.Length > 0 && !IsWord(token[0])) token = token[1..];
        while (token.Length > 0 && !IsWord(token[^1])) token = token[..^1];
        return token;
    }

    static bool IsWord(char c) => char.IsAsciiLetterOrDigit(c) || c == '_';
}
