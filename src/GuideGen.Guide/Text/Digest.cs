using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Security.Cryptography;

namespace GuideGen.Guide.Text;

/// <summary>What tells one content from another: its SHA-256 (FIPS 180-4).</summary>
public readonly record struct Digest(UInt128 High, UInt128 Low)
{
    /// <summary>Length in bytes.</summary>
    public const int Size = SHA256.HashSizeInBytes;

    public static Digest Of(ReadOnlySpan<byte> content)
    {
        Span<byte> hash = stackalloc byte[Size];
        SHA256.HashData(content, hash);
        return From(hash);
    }

    /// <param name="hash">As <see cref="CopyTo"/> wrote it.</param>
    public static Digest From(ReadOnlySpan<byte> hash) => new(BinaryPrimitives.ReadUInt128BigEndian(hash), BinaryPrimitives.ReadUInt128BigEndian(hash[(Size / 2)..]));

    public void CopyTo(Span<byte> hash)
    {
        BinaryPrimitives.WriteUInt128BigEndian(hash, High);
        BinaryPrimitives.WriteUInt128BigEndian(hash[(Size / 2)..], Low);
    }

    /// <summary>In hexadecimal, in small letters.</summary>
    public override string ToString() => $"{High:x32}{Low:x32}";
}

/// <summary>The digest of several contents in their order, each with its length, so that none can pass for a part of another.</summary>
public sealed class Digester : IDisposable
{
    // Some are asked for each file: a thread uses what it had.
    [ThreadStatic]
    static IncrementalHash? left;

    readonly IncrementalHash hash;

    public Digester() => (hash, left) = (left ?? IncrementalHash.CreateHash(HashAlgorithmName.SHA256), null);

    public Digester Add(ReadOnlySpan<byte> content)
    {
        Span<byte> length = stackalloc byte[sizeof(int)];
        BinaryPrimitives.WriteInt32BigEndian(length, content.Length);
        hash.AppendData(length);
        hash.AppendData(content);
        return this;
    }

    public Digester Add(ReadOnlySpan<char> text) => Add(MemoryMarshal.AsBytes(text));

    public Digester Add(Digest digest)
    {
        Span<byte> bytes = stackalloc byte[Digest.Size];
        digest.CopyTo(bytes);
        return Add(bytes);
    }

    /// <summary>Of all that was added; what is added from then on begins anew.</summary>
    public Digest Take()
    {
        Span<byte> bytes = stackalloc byte[Digest.Size];
        hash.GetHashAndReset(bytes);
        return Digest.From(bytes);
    }

    public void Dispose()
    {
        Take();
        left?.Dispose();
        left = hash;
    }
}
