using System.Text;

namespace GuideGen.Guide.Text;

/// <summary>Turns the bytes of a file into text: UTF-8 only, with or without byte order mark.</summary>
public static class SourceDecoder
{
    static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <returns>False if the bytes are not valid UTF-8; <paramref name="text"/> then has the readable rest.</returns>
    public static bool TryDecode(ReadOnlySpan<byte> bytes, out string text)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        var isValid = System.Text.Unicode.Utf8.IsValid(bytes);
        text = isValid ? Strict.GetString(bytes) : Encoding.UTF8.GetString(bytes);
        return isValid;
    }
}
