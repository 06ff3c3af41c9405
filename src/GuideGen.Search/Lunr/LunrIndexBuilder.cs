using System.Collections.Immutable;

namespace GuideGen.Search.Lunr;

/// <summary>Gives what some documents in a row came to: as it was kept, or made now.</summary>
/// <param name="first">Number of the first one.</param>
/// <param name="count">How many they are.</param>
/// <param name="make">Follows from the documents alone; its bytes mean something to the same build of the tool.</param>
public delegate byte[] RecallChunk(int first, int count, Func<byte[]> make);

/// <summary>Builds what lunr.js 2.3.9 builds with its default pipeline, BM25 constants and no metadata.</summary>
public static class LunrIndexBuilder
{
    // Each chunk stems its own words, so chunks are few; but one processor waits for the longest, and after an edit a whole one is made anew.
    const int MostInChunk = 800, FewestInChunk = 50, Chunks = 20;

    /// <exception cref="ArgumentException">
    /// A reference occurs twice, a document has not one text per field, or a field is not as <see cref="SearchField"/> asks.
    /// </exception>
    public static LunrIndex Build(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents) =>
        Build(fields, documents.Length, i => documents[i]);

    /// <inheritdoc cref="Build(ImmutableArray{SearchField}, ImmutableArray{LunrDocument})"/>
    /// <param name="count">How many documents there are.</param>
    /// <param name="make">Gives the document of a number from 0 on, asked at most once for each and side by side: the texts of all would fill a tenth of a gigabyte.</param>
    /// <param name="recall">Asked side by side; null if nothing is kept.</param>
    public static LunrIndex Build(ImmutableArray<SearchField> fields, int count, Func<int, LunrDocument> make, RecallChunk? recall = null) =>
        Build(fields, count, make, Math.Clamp(count / Chunks, FewestInChunk, MostInChunk), recall);

    internal static LunrIndex Build(ImmutableArray<SearchField> fields, int count, Func<int, LunrDocument> make, int documentsPerChunk, RecallChunk? recall = null)
    {
        Check(fields);
        var chunks = new IndexChunk[(count + documentsPerChunk - 1) / documentsPerChunk];
        string? uneven = null;
        Parallel.For(0, chunks.Length, i => chunks[i] = ChunkOf(i * documentsPerChunk));
        if (uneven is not null) throw new ArgumentException($"{uneven} has not one text per field.", nameof(make));
        ImmutableArray<string> refs = [.. chunks.SelectMany(c => c.Refs)];
        Check(refs);

        var vocabulary = new Vocabulary();
        var numbers = Array.ConvertAll(chunks, c => c.NumbersIn(vocabulary));
        var (lengths, byText) = Merge(chunks, numbers);
        return new LunrIndex(fields, new IndexParts(refs, [.. vocabulary.Terms], [.. vocabulary.Forms], lengths, byText));

        IndexChunk ChunkOf(int first)
        {
            var share = Math.Min(documentsPerChunk, count - first);
            return new(recall is null ? Made() : recall(first, share, Made));

            byte[] Made() => ChunkWriter.Pack([.. Enumerable.Range(first, share).Select(Even)]);
        }

        LunrDocument Even(int number)
        {
            var document = make(number);
            if (document.Texts.Length != fields.Length) uneven = document.Ref;
            return document;
        }
    }

    static (int[] Lengths, Frequencies ByText) Merge(IndexChunk[] chunks, int[][] numbers)
    {
        var rows = Sums(chunks.Select(c => c.TextCount));
        var items = Sums(chunks.Select(c => c.ItemCount));
        var lengths = new int[rows[^1]];
        var whole = new Frequencies(new int[rows[^1] + 1], new int[items[^1]], new int[items[^1]]);
        Parallel.For(0, chunks.Length, i => chunks[i].CopyTo(whole, lengths, rows[i], items[i], numbers[i]));
        return (lengths, whole);
    }

    static int[] Sums(IEnumerable<int> counts)
    {
        var sums = new List<int> { 0 };
        foreach (var count in counts) sums.Add(sums[^1] + count);
        return [.. sums];
    }

    static void Check(ImmutableArray<SearchField> fields)
    {
        if (!fields.All(f => f.Boost > 0 && f.Name.Length > 0 && f.Name.All(char.IsAsciiLetterLower)))
            throw new ArgumentException("A field's name is of lower-case letters and its boost above 0.", nameof(fields));
    }

    static void Check(ImmutableArray<string> refs)
    {
        if (refs.CountBy(r => r, StringComparer.Ordinal).FirstOrDefault(r => r.Value > 1) is { Key: { } twice })
            throw new ArgumentException($"The reference {twice} occurs twice.", nameof(refs));
    }
}
