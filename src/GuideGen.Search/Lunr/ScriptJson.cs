using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace GuideGen.Search.Lunr;

/// <summary>JSON with the escapes and the number forms of <c>JSON.stringify</c>, which no .NET writer has exactly.</summary>
sealed class ScriptJson(Stream utf8) : IDisposable
{
    readonly byte[] _buffer = new byte[64 * 1024];
    int _used;

    public void Raw(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > _buffer.Length - _used) Flush();
        if (bytes.Length > _buffer.Length)
        {
            utf8.Write(bytes);
            return;
        }
        bytes.CopyTo(_buffer.AsSpan(_used));
        _used += bytes.Length;
    }

    public void Text(string text) => Raw(Encoding.UTF8.GetBytes(Quote(text)));

    public void Number(long number)
    {
        if (_buffer.Length - _used < 20) Flush();
        Utf8Formatter.TryFormat(number, _buffer.AsSpan(_used), out var written);
        _used += written;
    }

    /// <summary>A count of thousandths as a script prints the fraction: no trailing zeros, no exponent at this size.</summary>
    public void Thousandths(long count)
    {
        Number(count / 1000);
        var rest = (int)(count % 1000);
        if (rest == 0) return;
        ReadOnlySpan<byte> digits = [(byte)'.', Digit(rest / 100), Digit(rest / 10), Digit(rest)];
        Raw(digits.TrimEnd((byte)'0'));
    }

    public void List(int count, Action<int> item)
    {
        for (var i = 0; i < count; i++)
        {
            if (i > 0) Raw(","u8);
            item(i);
        }
    }

    /// <summary>ECMA-262 QuoteJSONString: only quote, backslash, controls and halves of a surrogate pair are escaped.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder(text.Length + 2).Append('"');
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])) quoted.Append(text[i++]).Append(text[i]);
            else if (ShortEscapes.TryGetValue(text[i], out var escape)) quoted.Append(escape);
            else if (text[i] < ' ' || char.IsSurrogate(text[i])) quoted.Append("\\u").Append(((int)text[i]).ToString("x4", CultureInfo.InvariantCulture));
            else quoted.Append(text[i]);
        }
        return quoted.Append('"').ToString();
    }

    public void Dispose() => Flush();

    static readonly Dictionary<char, string> ShortEscapes = new()
    {
        ['"'] = "\\\"",
        ['\\'] = "\\\\",
        ['\b'] = "\\b",
        ['\f'] = "\\f",
        ['\n'] = "\\n",
        ['\r'] = "\\r",
        ['\t'] = "\\t",
    };

    static byte Digit(int number) => (byte)('0' + number % 10);

    void Flush()
    {
        utf8.Write(_buffer, 0, _used);
        _used = 0;
    }
}
