using System.Buffers;
using System.Text;
using System.Text.Unicode;

namespace GuideGen.Guide.Text;

/// <summary>Turns the bytes of a file into text: UTF-8 only, with or without byte order mark.</summary>
public static class SourceDecoder
{
    /// <param name="text">All of the text; if the bytes are not valid UTF-8, what stands before the first wrong one.</param>
    /// <returns>False if the bytes are not valid UTF-8.</returns>
    public static bool TryDecode(ReadOnlySpan<byte> bytes, out string text)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        var characters = ArrayPool<char>.Shared.Rent(bytes.Length);
        var status = Utf8.ToUtf16(bytes, characters, out _, out var written, replaceInvalidSequences: false);
        text = new string(characters, 0, written);
        ArrayPool<char>.Shared.Return(characters);
        return status == OperationStatus.Done;
    }
}
