using System.Buffers.Binary;

namespace GuideGen.Guide.Pictures;

/// <summary>Reads size, orientation and whether a position is told from the head of a photo, without decoding it.</summary>
/// <remarks>PNG (W3C, third edition), JPEG (ITU-T T.81, annex B) and WebP (RFC 9649).</remarks>
static class PhotoHeadReader
{
    /// <summary>Null if the bytes are none of the three formats, or end too early.</summary>
    public static PhotoHead? Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > 8 && bytes[0] == 0x89 && bytes[1..8].SequenceEqual("PNG\r\n\u001a\n"u8)) return Png(bytes);
        if (bytes.Length > 4 && bytes[0] == 0xFF && bytes[1] == 0xD8) return Jpeg(bytes);
        return bytes.Length > 30 && bytes.StartsWith("RIFF"u8) && bytes[8..12].SequenceEqual("WEBP"u8) ? WebP(bytes) : null;
    }

    static PhotoHead? Png(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < 24 || !bytes[12..16].SequenceEqual("IHDR"u8)) return null;
        var head = new PhotoHead(BinaryPrimitives.ReadInt32BigEndian(bytes[16..]), BinaryPrimitives.ReadInt32BigEndian(bytes[20..]));
        for (var at = 8; at + 12 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(bytes[at..]);
            if (length < 0 || length > bytes.Length - at - 12) break;
            if (bytes.Slice(at + 4, 4).SequenceEqual("eXIf"u8)) head = With(head, bytes.Slice(at + 8, length));
            at += length + 12;
        }

        return Sound(head);
    }

    static PhotoHead? Jpeg(ReadOnlySpan<byte> bytes)
    {
        var exif = new PhotoHead(0, 0);
        for (var at = 2; at + 9 < bytes.Length && bytes[at] == 0xFF;)
        {
            var (marker, length) = (bytes[at + 1], BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]));
            if (marker == 0xFF)
            {
                at++;
                continue;
            }

            // Frame headers; C4, C8 and CC are tables.
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
            {
                return Sound(exif with { Height = BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 5)..]), Width = BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 7)..]) });
            }

            if (length < 2 || length > bytes.Length - at - 2) return null;
            var segment = bytes.Slice(at + 4, length - 2);
            if (marker == 0xE1 && segment.StartsWith("Exif\0\0"u8)) exif = With(exif, segment[6..]);
            at += length + 2;
        }

        return null;
    }

    static PhotoHead? WebP(ReadOnlySpan<byte> bytes)
    {
        var kind = bytes[12..16];
        if (kind.SequenceEqual("VP8 "u8)) return Sound(new PhotoHead(Word(bytes, 26) & 0x3FFF, Word(bytes, 28) & 0x3FFF));
        if (kind.SequenceEqual("VP8L"u8))
        {
            var bits = BinaryPrimitives.ReadUInt32LittleEndian(bytes[21..]);
            return Sound(new PhotoHead((int)(bits & 0x3FFF) + 1, (int)(bits >> 14 & 0x3FFF) + 1));
        }

        if (!kind.SequenceEqual("VP8X"u8)) return null;
        var head = new PhotoHead(Triple(bytes, 24) + 1, Triple(bytes, 27) + 1);
        for (var at = 12; at + 8 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadInt32LittleEndian(bytes[(at + 4)..]);
            if (length < 0 || length > bytes.Length - at - 8) break;
            if (bytes.Slice(at, 4).SequenceEqual("EXIF"u8)) head = With(head, bytes.Slice(at + 8, length));
            at += 8 + length + (length & 1);
        }

        return Sound(head);
    }

    static PhotoHead With(PhotoHead head, ReadOnlySpan<byte> exif)
    {
        var (turn, hasPosition) = ExifReader.Read(exif.StartsWith("Exif\0\0"u8) ? exif[6..] : exif);
        return head with { Turn = turn, HasPosition = hasPosition };
    }

    static PhotoHead? Sound(PhotoHead head) => head is { Width: > 0, Height: > 0 } ? head : null;

    static int Word(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);

    static int Triple(ReadOnlySpan<byte> bytes, int at) => bytes[at] | (bytes[at + 1] << 8) | (bytes[at + 2] << 16);
}
