namespace GuideGen.Codes;

/// <summary>
/// A diagnostic trouble code as SAE J2012 / ISO 15031-6 builds it: a letter, a digit 0 to 3 and three hexadecimal digits,
/// held as the 16 bits that travel on the bus. Every 16-bit value is a well-formed code. Ordered by the printed text.
/// </summary>
public readonly record struct TroubleCode(ushort Value) : IComparable<TroubleCode>
{
    public const int Length = 5;

    // In the order of the two top bits, which is not the order of the alphabet.
    const string Letters = "PCBU";
    const string HexDigits = "0123456789ABCDEF";

    // Where a letter stands when codes are sorted by their text: B, C, P, U.
    static ReadOnlySpan<byte> LetterRank => [2, 1, 0, 3];

    public byte High => (byte)(Value >> 8);

    public byte Low => (byte)Value;

    public char Letter => Letters[Value >> 14];

    /// <summary>By SAE J2012: P2, P34 to P3F and U3 belong to the standard, B3 and C3 are kept back.</summary>
    public CodeOwner Owner => (Letter, Second) switch
    {
        (_, 0) => CodeOwner.IsoSae,
        ('P', 2) or ('U', 3) => CodeOwner.IsoSae,
        ('P', 3) => Third >= 4 ? CodeOwner.IsoSae : CodeOwner.Maker,
        (_, 3) => CodeOwner.Reserved,
        _ => CodeOwner.Maker,
    };

    /// <summary>A hint, never a rule; see <see cref="CodeArea"/>.</summary>
    public CodeArea Area => CodeArea.Of(this);

    /// <summary>P0000, which fills an empty slot in an answer and says that no code is stored.</summary>
    public bool IsEmptySlot => Value == 0;

    int Second => (Value >> 12) & 3;

    int Third => (Value >> 8) & 15;

    public static TroubleCode FromBytes(byte high, byte low) => new((ushort)((high << 8) | low));

    /// <summary>Takes the five characters and nothing more; lower case is accepted, no blank or separator is.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out TroubleCode code)
    {
        code = default;
        if (text.Length != Length)
            return false;
        var letter = Letters.IndexOf((char)(text[0] & ~0x20), StringComparison.Ordinal);
        var second = text[1] - '0';
        if (!char.IsAsciiLetter(text[0]) || letter < 0 || second is < 0 or > 3)
            return false;
        var value = (letter << 2) | second;
        foreach (var c in text[2..])
        {
            if (!char.IsAsciiHexDigit(c))
                return false;
            value = (value << 4) | HexValue(c);
        }
        code = new((ushort)value);
        return true;
    }

    /// <exception cref="FormatException">The text is not a well-formed code.</exception>
    public static TroubleCode Parse(ReadOnlySpan<char> text) =>
        TryParse(text, out var code) ? code : throw new FormatException($"'{text}' is not a trouble code such as P0299.");

    /// <summary>Writes the five characters; false if there is no room for them.</summary>
    public bool TryFormat(Span<char> destination, out int charsWritten)
    {
        charsWritten = 0;
        if (destination.Length < Length)
            return false;
        destination[0] = Letter;
        destination[1] = (char)('0' + Second);
        destination[2] = HexDigits[Third];
        destination[3] = HexDigits[Low >> 4];
        destination[4] = HexDigits[Low & 15];
        charsWritten = Length;
        return true;
    }

    public override string ToString() => string.Create(Length, this, static (span, code) => code.TryFormat(span, out _));

    public int CompareTo(TroubleCode other) => SortKey.CompareTo(other.SortKey);

    int SortKey => (LetterRank[Value >> 14] << 14) | (Value & 0x3FFF);

    public static bool operator <(TroubleCode left, TroubleCode right) => left.CompareTo(right) < 0;

    public static bool operator >(TroubleCode left, TroubleCode right) => left.CompareTo(right) > 0;

    public static bool operator <=(TroubleCode left, TroubleCode right) => left.CompareTo(right) <= 0;

    public static bool operator >=(TroubleCode left, TroubleCode right) => left.CompareTo(right) >= 0;

    static int HexValue(char c) => c <= '9' ? c - '0' : (c & ~0x20) - 'A' + 10;
}
