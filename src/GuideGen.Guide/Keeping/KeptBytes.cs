using System.Buffers;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Keeping;

/// <summary>How a value is written down, and read again by the same build of the tool.</summary>
interface IKeptForm<T>
{
    void Write(KeptWriter writer, T value);

    /// <summary>The same value.</summary>
    T Read(ref KeptReader reader);
}

/// <summary>Numbers take seven bits a byte, the lowest first; the eighth says that more follow.</summary>
sealed class KeptWriter
{
    readonly ArrayBufferWriter<byte> bytes = new();

    public ReadOnlySpan<byte> Written => bytes.WrittenSpan;

    public void Clear() => bytes.ResetWrittenCount();

    public void Number(int number)
    {
        var rest = (uint)number;
        for (; rest > 127; rest >>= 7) Byte((byte)(rest | 128));
        Byte((byte)rest);
    }

    public void Flag(bool flag) => Byte(flag ? (byte)1 : (byte)0);

    public void Text(string text)
    {
        var length = Encoding.UTF8.GetByteCount(text);
        Number(length);
        Encoding.UTF8.GetBytes(text, bytes.GetSpan(length));
        bytes.Advance(length);
    }

    public void Digest(Digest digest)
    {
        digest.CopyTo(bytes.GetSpan(Guide.Text.Digest.Size));
        bytes.Advance(Guide.Text.Digest.Size);
    }

    public void Bytes(ReadOnlySpan<byte> content)
    {
        Number(content.Length);
        bytes.Write(content);
    }

    public void All<T>(ImmutableArray<T> items, Action<T> write)
    {
        Number(items.Length);
        foreach (var item in items) write(item);
    }

    /// <summary>A place, and what is told there: where they are the same, the words are not written a second time.</summary>
    public void Said(Located<string> said)
    {
        Place(said.Span);
        var isWritten = said.Span.Source.Text.AsSpan(said.Span.Start, said.Span.Length).SequenceEqual(said.Value);
        Flag(isWritten);
        if (!isWritten) Text(said.Value);
    }

    public void Place(SourceSpan span)
    {
        Number(span.Start);
        Number(span.Length);
    }

    void Byte(byte value)
    {
        bytes.GetSpan(1)[0] = value;
        bytes.Advance(1);
    }
}

/// <summary>Reads one of several.</summary>
delegate T ReadOne<T>(ref KeptReader reader);

/// <summary>Reads what a <see cref="KeptWriter"/> wrote.</summary>
ref struct KeptReader(ReadOnlySpan<byte> bytes)
{
    ReadOnlySpan<byte> rest = bytes;

    public readonly int Left => rest.Length;

    public int Number()
    {
        uint number = 0;
        for (var shift = 0; ; shift += 7)
        {
            var next = Byte();
            number |= (uint)(next & 127) << shift;
            if (next < 128) return (int)number;
        }
    }

    public bool Flag() => Byte() != 0;

    public string Text() => Encoding.UTF8.GetString(Take(Number()));

    public Digest Digest() => Guide.Text.Digest.From(Take(Guide.Text.Digest.Size));

    public ReadOnlySpan<byte> Bytes() => Take(Number());

    public ImmutableArray<T> All<T>(ReadOne<T> read)
    {
        var items = new T[Number()];
        for (var i = 0; i < items.Length; i++) items[i] = read(ref this);
        return ImmutableCollectionsMarshal.AsImmutableArray(items);
    }

    public Located<string> Said(SourceText source)
    {
        var place = Place(source);
        return new(Flag() ? place.Written : Text(), place);
    }

    public SourceSpan Place(SourceText source) => source.Span(Number(), Number());

    byte Byte() => Take(1)[0];

    ReadOnlySpan<byte> Take(int length)
    {
        var taken = rest[..length];
        rest = rest[length..];
        return taken;
    }
}
