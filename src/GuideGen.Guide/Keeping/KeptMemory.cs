using System.Collections.Concurrent;
using System.Security.Cryptography;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Keeping;

/// <summary>What is written down about a content.</summary>
enum KeptKind
{
    Yaml,
    FrontMatter,
    Body,
    BodyWithHtml,
    Findings,

    /// <summary>Bytes that mean something to who asks for them.</summary>
    Made,
}

/// <param name="Basis">Of what it depends on apart from the content.</param>
readonly record struct KeptKey(KeptKind Kind, Digest Basis, Digest Content);

/// <summary>
/// What was worked out about single files, written down between two runs of the tool. Everything stands under the digest of the
/// content it follows from, so it may be old, of another guide or deleted: then more is worked out anew, and never anything else.
/// </summary>
/// <remarks>
/// A file begins with the digest of the tool that wrote it and the SHA-256 of the rest; another tool's, or a damaged one, holds nothing.
/// Only what a run asked for is written down again, so it never grows beyond one guide.
/// </remarks>
public sealed class KeptMemory : GuideMemory
{
    const int HeadSize = 2 * Digest.Size;

    readonly Digest tool;
    readonly byte[] before;
    readonly Dictionary<KeptKey, Range> places = [];
    readonly ConcurrentDictionary<KeptKey, ReadOnlyMemory<byte>> current = [];

    /// <param name="before">As <see cref="WriteTo"/> made it; anything else holds nothing.</param>
    /// <param name="tool">Tells this build of the tool from any other.</param>
    public KeptMemory(byte[] before, Digest tool)
    {
        (this.before, this.tool) = (before, tool);
        if (IsOurs(before, tool)) Index();
    }

    /// <param name="file">Can be gone back in.</param>
    public void WriteTo(Stream file)
    {
        Span<byte> head = stackalloc byte[HeadSize];
        file.Write(head);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var entry = new KeptWriter();
        foreach (var (key, value) in current)
        {
            entry.Clear();
            entry.Number((int)key.Kind);
            entry.Digest(key.Basis);
            entry.Digest(key.Content);
            entry.Bytes(value.Span);
            hash.AppendData(entry.Written);
            file.Write(entry.Written);
        }

        tool.CopyTo(head);
        hash.GetHashAndReset(head[Digest.Size..]);
        file.Position = 0;
        file.Write(head);
    }

    internal override bool TryFind<T>(KeptKey key, IKeptForm<T> form, out T value)
    {
        value = default!;
        if (!places.TryGetValue(key, out var place)) return false;
        var bytes = before.AsMemory()[place];
        current[key] = bytes;
        var reader = new KeptReader(bytes.Span);
        value = form.Read(ref reader);
        return true;
    }

    internal override void Keep<T>(KeptKey key, IKeptForm<T> form, T value)
    {
        var writer = new KeptWriter();
        form.Write(writer, value);
        current[key] = writer.Written.ToArray();
    }

    static bool IsOurs(byte[] file, Digest tool) =>
        file.Length >= HeadSize
        && Digest.From(file) == tool
        && SHA256.HashData(file.AsSpan(HeadSize)).AsSpan().SequenceEqual(file.AsSpan(Digest.Size, Digest.Size));

    void Index()
    {
        var reader = new KeptReader(before.AsSpan(HeadSize));
        while (reader.Left > 0)
        {
            var key = new KeptKey((KeptKind)reader.Number(), reader.Digest(), reader.Digest());
            var length = reader.Bytes().Length;
            var end = before.Length - reader.Left;
            places[key] = (end - length)..end;
        }
    }
}
