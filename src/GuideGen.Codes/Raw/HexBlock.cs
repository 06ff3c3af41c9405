namespace GuideGen.Codes.Raw;

/// <summary>Neighbouring lines of bytes, kept together because a message may need several of them.</summary>
sealed class HexBlock
{
    readonly List<HexByte> bytes = [];
    readonly List<HexLine> lines = [];

    internal IReadOnlyList<HexLine> Lines => lines;

    /// <summary>Of all lines, one behind the other; a copy, so that messages may keep pieces of it.</summary>
    internal ReadOnlyMemory<HexByte> CopyBytes() => bytes.ToArray();

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
