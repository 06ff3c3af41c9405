using System.Runtime.InteropServices;

namespace GuideGen.Codes.Raw;

enum Framing
{
    /// <summary>Only the bytes were pasted, so the bus must be told from them.</summary>
    Unknown,

    /// <summary>ISO 15765-4: a count stands before the codes.</summary>
    Can,

    /// <summary>ISO 9141-2, ISO 14230-4 and J1850: three pairs in a message, no count.</summary>
    Pairs,
}

/// <summary>The payload of one message, put together from its frames.</summary>
/// <param name="first">What the first frame brought; most messages have but one, which is then not copied.</param>
sealed class RawMessage(string? source, Framing framing, int expected, ReadOnlyMemory<HexByte> first, bool isDoubtful = false)
{
    readonly ReadOnlyMemory<HexByte> first = first[..Math.Min(expected, first.Length)];
    List<HexByte>? all;

    internal string? Source => source;

    internal Framing Framing => framing;

    /// <summary>Written without gaps or header, so it may not be an answer at all.</summary>
    internal bool IsDoubtful => isDoubtful;

    internal ReadOnlySpan<HexByte> Bytes => all is null ? first.Span : CollectionsMarshal.AsSpan(all);

    internal int NextIndex { get; set; } = 1;

    internal bool IsWhole => Bytes.Length >= expected;

    /// <summary>Adds what still belongs to the payload; the rest of a frame is padding.</summary>
    internal void Add(ReadOnlySpan<HexByte> bytes)
    {
        all ??= [.. first.Span];
        all.AddRange(bytes[..Math.Clamp(expected - all.Count, 0, bytes.Length)]);
    }
}
