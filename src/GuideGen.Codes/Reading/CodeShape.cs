namespace GuideGen.Codes.Reading;

/// <summary>The five characters of a code with the slips that are put right without asking.</summary>
static class CodeShape
{
    // Repairing one letter is safe only while enough of the rest really is digits: POBOX is no code.
    const int FewestRealDigits = 2;

    internal static bool StartsLikeCode(char c) => c is 'P' or 'C' or 'B' or 'U';

    /// <param name="text">Five folded characters.</param>
    internal static bool TryRead(ReadOnlySpan<char> text, out TroubleCode code, out bool repaired)
    {
        repaired = false;
        if (TroubleCode.TryParse(text, out code))
            return true;
        if (text.Length != TroubleCode.Length)
            return false;
        Span<char> mended = stackalloc char[TroubleCode.Length];
        var realDigits = 0;
        for (var i = 0; i < text.Length; i++)
        {
            mended[i] = i == 0 ? text[i] : Mend(text[i]);
            realDigits += char.IsAsciiDigit(text[i]) ? 1 : 0;
        }
        repaired = true;
        return realDigits >= FewestRealDigits && TroubleCode.TryParse(mended, out code);
    }

    /// <summary>Letter and digits as they were written apart.</summary>
    internal static bool TryRead(char letter, ReadOnlySpan<char> digits, out TroubleCode code, out bool repaired)
    {
        Span<char> whole = stackalloc char[TroubleCode.Length];
        repaired = false;
        code = default;
        if (digits.Length != TroubleCode.Length - 1)
            return false;
        whole[0] = letter;
        digits.CopyTo(whole[1..]);
        return TryRead(whole, out code, out repaired);
    }

    /// <summary>A letter and three characters, read as if the zero behind the letter had been left out.</summary>
    internal static bool TryReadWithoutZero(ReadOnlySpan<char> text, out TroubleCode code)
    {
        Span<char> digits = ['0', text[1], text[2], text[3]];
        return CountDigits(text[1..]) >= FewestRealDigits & TryRead(text[0], digits, out code, out _);
    }

    internal static int CountDigits(ReadOnlySpan<char> text)
    {
        var count = 0;
        foreach (var c in text)
            count += char.IsAsciiDigit(c) ? 1 : 0;
        return count;
    }

    internal static bool IsHex(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            if (!char.IsAsciiHexDigit(c))
                return false;
        }
        return text.Length > 0;
    }

    /// <summary>Two folded hexadecimal digits.</summary>
    internal static byte HexByte(ReadOnlySpan<char> text) => (byte)((HexValue(text[0]) << 4) | HexValue(text[1]));

    static int HexValue(char c) => c <= '9' ? c - '0' : c - 'A' + 10;

    static char Mend(char c) => c switch { 'O' => '0', 'I' or 'L' => '1', _ => c };
}
