using System.Buffers;
using System.Text;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>Text that grows in a borrowed array: drawing 10,000 pages into string builders threw four gigabytes away.</summary>
sealed class TextBuffer : IScriptOutput, IDisposable
{
    const int FirstSize = 32_768;

    char[] text = ArrayPool<char>.Shared.Rent(FirstSize);
    int length;

    public void Append(ReadOnlySpan<char> more)
    {
        if (length + more.Length > text.Length) Grow(length + more.Length);
        more.CopyTo(text.AsSpan(length));
        length += more.Length;
    }

    public void Write(string text, int offset, int count) => Append(text.AsSpan(offset, count));

    public ValueTask WriteAsync(string text, int offset, int count, CancellationToken cancellationToken)
    {
        Write(text, offset, count);
        return ValueTask.CompletedTask;
    }

    public ReadOnlySpan<char> Span => text.AsSpan(0, length);

    public byte[] ToUtf8()
    {
        var bytes = new byte[Encoding.UTF8.GetByteCount(Span)];
        Encoding.UTF8.GetBytes(Span, bytes);
        return bytes;
    }

    /// <summary>Nothing: a template asks for it each time it has been drawn, and a copy of each page would be thrown away.</summary>
    public override string ToString() => "";

    public void Dispose()
    {
        ArrayPool<char>.Shared.Return(text);
        text = [];
        length = 0;
    }

    void Grow(int needed)
    {
        var larger = ArrayPool<char>.Shared.Rent(Math.Max(needed, text.Length * 2));
        text.AsSpan(0, length).CopyTo(larger);
        ArrayPool<char>.Shared.Return(text);
        text = larger;
    }
}
