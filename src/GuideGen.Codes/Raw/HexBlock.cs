using System.Runtime.InteropServices;

namespace GuideGen.Codes.Raw;

/// <summary>Neighbouring lines of bytes, kept together because a message may need several of them.</summary>
sealed class HexBlock
{
    readonly List<HexByte> bytes = [];
    readonly List<HexLine> lines = [];

    internal IReadOnlyList<HexLine> Lines => lines;

    internal ReadOnlySpan<HexByte> BytesOf(HexLine line) => CollectionsMarshal.AsSpan(bytes).Slice(line.From, line.Count);

    /// <returns>False if the line holds anything else than bytes.</returns>
    internal bool TryAdd(string folded, int start, int end)
    {
        if (HexLine.TryRead(folded, start, end, bytes) is not { } line)
            return false;
        lines.Add(line);
        return true;
    }

    internal void Clear()
    {
        bytes.Clear();
        lines.Clear();
    }
}
