using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace GuideGen.Codes;

/// <summary>
/// The columns that Packing/PackCatalogue.cs wrote, unpacked: rows in the order of the printed codes. Heads and keys stay bytes
/// until somebody asks for one, because unpacking has to be quick and most readers ask for a handful.
/// </summary>
sealed class CatalogueData
{
    readonly byte[] bytes;
    readonly int[] headStarts;
    readonly ushort[] heads;
    readonly int conditionColumn;
    readonly int flagColumn;

    CatalogueData(byte[] bytes)
    {
        this.bytes = bytes;
        Count = BinaryPrimitives.ReadUInt16LittleEndian(bytes);
        Codes = Sum(2);
        heads = Sum(2 + (2 * Count));
        conditionColumn = 2 + (4 * Count);
        flagColumn = conditionColumn + Count;
        var text = flagColumn + Count;
        var keysEnd = text + bytes.AsSpan(text).IndexOf("\n\n"u8);
        ConditionKeys = Encoding.UTF8.GetString(bytes.AsSpan(text, keysEnd - text)).Split('\n');
        headStarts = LineStarts(keysEnd + 2);
    }

    public int Count { get; }

    /// <summary>The codes as 16-bit values.</summary>
    public ushort[] Codes { get; }

    public string[] ConditionKeys { get; }

    public static CatalogueData Load()
    {
        using var packed = typeof(CatalogueData).Assembly.GetManifestResourceStream("catalogue.bin")
            ?? throw new InvalidOperationException("The catalogue is not embedded in this assembly.");
        Span<byte> length = stackalloc byte[sizeof(int)];
        packed.ReadExactly(length);
        var bytes = new byte[BinaryPrimitives.ReadInt32LittleEndian(length)];
        using var inflate = new DeflateStream(packed, CompressionMode.Decompress);
        inflate.ReadExactly(bytes);
        return new(bytes);
    }

    public int HeadCount => headStarts.Length - 1;

    public int Head(int row) => heads[row];

    public string HeadText(int head) => Encoding.UTF8.GetString(bytes, headStarts[head], headStarts[head + 1] - headStarts[head] - 1);

    public int Condition(int row) => bytes[conditionColumn + row];

    public Support Support(int row) => (Support)(bytes[flagColumn + row] & 3);

    public bool InCircuit(int row) => (bytes[flagColumn + row] & 4) != 0;

    // A column holds steps from one row to the next: first all low bytes, then all high bytes.
    ushort[] Sum(int start)
    {
        var values = new ushort[Count];
        var low = bytes.AsSpan(start, Count);
        var high = bytes.AsSpan(start + Count, Count);
        var last = 0;
        for (var i = 0; i < values.Length; i++)
            values[i] = (ushort)(last += low[i] | (high[i] << 8));
        return values;
    }

    int[] LineStarts(int start)
    {
        var starts = new int[bytes.AsSpan(start).Count((byte)'\n') + 1];
        var at = starts[0] = start;
        for (var i = 1; i < starts.Length; i++)
            starts[i] = at += bytes.AsSpan(at).IndexOf((byte)'\n') + 1;
        return starts;
    }
}
