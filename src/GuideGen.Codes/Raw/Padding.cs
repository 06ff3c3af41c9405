namespace GuideGen.Codes.Raw;

static class Padding
{
    /// <summary>True too for no bytes at all.</summary>
    internal static bool IsOnly(ReadOnlySpan<HexByte> bytes)
    {
        foreach (var b in bytes)
        {
            if (b.Value is not (0x00 or 0x55 or 0xAA or 0xCC or 0xFF))
                return false;
        }
        return true;
    }
}
