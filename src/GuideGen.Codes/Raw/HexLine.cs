using System.Buffers;
using System.Globalization;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Raw;

readonly record struct HexByte(byte Value, int Start);

/// <summary>A line that holds nothing but bytes, and what stands before them.</summary>
/// <param name="Header">The CAN identifier, three or eight digits; empty if none was pasted.</param>
/// <param name="Index">The number of a numbered frame (its digit and a colon), or -1.</param>
/// <param name="Announced">Three digits alone: the length of the numbered frames that follow, or -1.</param>
/// <param name="From">Where its bytes begin in the list that was read into.</param>
/// <param name="IsBareNumber">Decimal digits in a row without gaps or header: it could as well be a phone number.</param>
readonly record struct HexLine(string Header, int Index, int Announced, int From, int Count, int Start, int End, bool IsBareNumber)
{
    const string Digits = "0123456789ABCDEF";
    static readonly SearchValues<char> HexDigits = SearchValues.Create(Digits);
    static readonly SearchValues<char> LineCharacters = SearchValues.Create(Digits + "X: ");

    /// <param name="bytes">Takes the bytes of this line behind those of the lines before.</param>
    /// <returns>Null if a single token is anything else than hexadecimal digits in pairs.</returns>
    internal static HexLine? TryRead(string folded, int start, int end, List<HexByte> bytes)
    {
        var from = start + AdapterNoise.Skip(folded.AsSpan(start, end - start));
        var text = folded.AsSpan(from, end - from).TrimEnd([' ', '>']);
        if (text.IsEmpty || text.ContainsAnyExcept(LineCharacters))
            return null;
        var reader = new Tokens(text, from, bytes);
        return reader.Read() ? reader.ToLine(start, end) : null;
    }

    ref struct Tokens(ReadOnlySpan<char> text, int offset, List<HexByte> bytes)
    {
        const int HeaderDigits = 3;

        readonly ReadOnlySpan<char> text = text;
        int first = bytes.Count;
        string header = "";
        int index = -1;
        int announced = -1;
        bool hasRow;

        internal bool Read()
        {
            var isFirst = true;
            foreach (var range in text.Split(' '))
            {
                var token = text[range];
                if (token.IsEmpty)
                    continue;
                var start = offset + range.Start.Value;
                if (!(isFirst && TakeFirst(token, start)) && !TakeBytes(token, start))
                    return false;
                isFirst = false;
            }
            return true;
        }

        internal HexLine ToLine(int start, int end)
        {
            TakeWideHeader();
            var isBareNumber = hasRow && header.Length == 0 && !text.ContainsAnyInRange('A', 'X');
            return new(header, index, announced, first, bytes.Count - first, start, end, isBareNumber);
        }

        // A header, a frame number or a length can only come first. An odd number of digits begins with an 11-bit identifier.
        bool TakeFirst(ReadOnlySpan<char> token, int start)
        {
            if (token.Length == 2 && token[1] == ':')
                return int.TryParse(token[..1], NumberStyles.HexNumber, CultureInfo.InvariantCulture, out index);
            if (!IsHex(token) || token.Length < HeaderDigits || token.Length % 2 == 0 || (token.Length > HeaderDigits && token[0] != '7'))
                return false;
            if (text.Length == HeaderDigits)
                announced = int.Parse(token, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            else
                header = token[..HeaderDigits].ToString();
            return token.Length == HeaderDigits || TakeBytes(token[HeaderDigits..], start + HeaderDigits);
        }

        bool TakeBytes(ReadOnlySpan<char> token, int start)
        {
            if (token.Length == 4 && token[..2] is "0X")
                return TakeBytes(token[2..], start + 2);
            if (token.Length % 2 != 0 || !IsHex(token))
                return false;
            hasRow |= token.Length > 2;
            for (var i = 0; i < token.Length; i += 2)
                bytes.Add(new(CodeShape.HexByte(token.Slice(i, 2)), start + i));
            return true;
        }

        // A 29-bit identifier of this use begins 18DA or 18DB, in one piece or as four bytes.
        void TakeWideHeader()
        {
            if (header.Length > 0 || index >= 0 || bytes.Count < first + 5 || bytes[first].Value != 0x18 || bytes[first + 1].Value is not (0xDA or 0xDB))
                return;
            header = string.Concat(bytes.Skip(first).Take(4).Select(b => b.Value.ToString("X2", CultureInfo.InvariantCulture)));
            first += 4;
        }

        static bool IsHex(ReadOnlySpan<char> token) => !token.ContainsAnyExcept(HexDigits);
    }
}
