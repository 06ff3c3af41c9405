using System.Runtime.InteropServices;

namespace GuideGen.Search.Lunr;

/// <summary>
/// Some documents in a row, indexed on their own with their own term numbers, from the bytes of a <see cref="ChunkWriter"/>. Because
/// terms are numbered by first appearance, numbering the chunks' terms again, chunk after chunk, gives what one pass over all documents gives.
/// </summary>
sealed class IndexChunk
{
    readonly byte[] _packed;
    readonly int _terms, _texts;

    public IndexChunk(byte[] packed)
    {
        _packed = packed;
        using var reader = ReaderFrom(0);
        var refs = new string[reader.Read7BitEncodedInt()];
        for (var i = 0; i < refs.Length; i++) refs[i] = Text(reader).ToString();
        Refs = refs;
        (TextCount, ItemCount) = (reader.Read7BitEncodedInt(), reader.Read7BitEncodedInt());
        var size = reader.Read7BitEncodedInt();
        _texts = (int)reader.BaseStream.Position;
        _terms = _texts + size;
    }

    /// <summary>References of the documents.</summary>
    public IReadOnlyList<string> Refs { get; }

    /// <summary>Field texts of all documents.</summary>
    public int TextCount { get; }

    public int ItemCount { get; }

    /// <summary>Takes the chunk's terms into a vocabulary.</summary>
    /// <returns>The number there of each of them.</returns>
    public int[] NumbersIn(Vocabulary vocabulary)
    {
        using var reader = ReaderFrom(_terms);
        var numbers = new int[reader.Read7BitEncodedInt()];
        for (var i = 0; i < numbers.Length; i++)
        {
            var term = Text(reader);
            numbers[i] = vocabulary.NumberOf(term, Text(reader));
        }

        return numbers;
    }

    /// <summary>Writes this chunk's rows into the whole table, from <paramref name="row"/> and <paramref name="item"/> on.</summary>
    /// <param name="whole">Arrays of full size; each chunk writes only its own part.</param>
    /// <param name="lengths">Terms of each field text.</param>
    /// <param name="row">The chunk's first field text.</param>
    /// <param name="item">Where that row's items begin.</param>
    /// <param name="numbers">The whole index's number of each of the chunk's terms.</param>
    public void CopyTo(Frequencies whole, int[] lengths, int row, int item, int[] numbers)
    {
        using var reader = ReaderFrom(_texts);
        for (var text = row; text < row + TextCount; text++)
        {
            lengths[text] = reader.Read7BitEncodedInt();
            for (var left = reader.Read7BitEncodedInt(); left > 0; left--)
            {
                whole.Items[item] = numbers[reader.Read7BitEncodedInt()];
                whole.Counts[item++] = reader.Read7BitEncodedInt();
            }

            whole.Starts[text + 1] = item;
        }
    }

    BinaryReader ReaderFrom(int place) => new(new MemoryStream(_packed, writable: false) { Position = place });

    ReadOnlySpan<char> Text(BinaryReader reader)
    {
        var size = reader.Read7BitEncodedInt() * sizeof(char);
        var text = MemoryMarshal.Cast<byte, char>(_packed.AsSpan((int)reader.BaseStream.Position, size));
        reader.BaseStream.Position += size;
        return text;
    }
}
