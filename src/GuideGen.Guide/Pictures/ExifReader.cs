using System.Buffers.Binary;

namespace GuideGen.Guide.Pictures;

/// <summary>Reads the two entries of EXIF data that matter here: orientation and the pointer to a position (CIPA DC-008).</summary>
static class ExifReader
{
    const int Orientation = 0x0112;
    const int PositionPointer = 0x8825;
    const int EntryLength = 12;

    /// <param name="tiff">From the byte order mark on.</param>
    public static (int Turn, bool HasPosition) Read(ReadOnlySpan<byte> tiff)
    {
        var (turn, hasPosition) = (1, false);
        if (tiff.Length < 8 || !(tiff.StartsWith("II"u8) || tiff.StartsWith("MM"u8))) return (turn, hasPosition);
        var isLittle = tiff[0] == 'I';
        var start = isLittle ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]);
        if (start > tiff.Length - 2) return (turn, hasPosition);
        var entries = tiff[(int)start..];
        var count = Word(entries, isLittle);
        for (var i = 0; i < count && 2 + ((i + 1) * EntryLength) <= entries.Length; i++)
        {
            var entry = entries.Slice(2 + (i * EntryLength), EntryLength);
            var tag = Word(entry, isLittle);
            if (tag == Orientation && Word(entry[8..], isLittle) is >= 1 and <= 8 and var value) turn = value;
            hasPosition |= tag == PositionPointer;
        }

        return (turn, hasPosition);
    }

    static int Word(ReadOnlySpan<byte> bytes, bool isLittle) =>
        isLittle ? BinaryPrimitives.ReadUInt16LittleEndian(bytes) : BinaryPrimitives.ReadUInt16BigEndian(bytes);
}
