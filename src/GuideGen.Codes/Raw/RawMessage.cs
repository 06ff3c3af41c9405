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
sealed class RawMessage(string? source, Framing framing, int expected, bool isDoubtful = false)
{
    internal string? Source => source;

    internal Framing Framing => framing;

    /// <summary>Written without gaps or header, so it may not be an answer at all.</summary>
    internal bool IsDoubtful => isDoubtful;

    internal List<HexByte> Bytes { get; } = [];

    internal int NextIndex { get; set; } = 1;

    internal bool IsWhole => Bytes.Count >= expected;

    /// <summary>Adds what still belongs to the payload; the rest of a frame is padding.</summary>
    internal void Add(ReadOnlySpan<HexByte> bytes)
    {
        bytes = bytes[..Math.Clamp(expected - Bytes.Count, 0, bytes.Length)];
        Bytes.EnsureCapacity(Bytes.Count + bytes.Length);
        Bytes.AddRange(bytes);
    }
}
