using System.Collections.Immutable;

namespace GuideGen.Search.Lunr;

/// <summary>Builds what lunr.js 2.3.9 builds with its default pipeline, BM25 constants and no metadata.</summary>
public static class LunrIndexBuilder
{
    // Each chunk stems its own words, so chunks are few; a guide of a thousand pages still keeps two processors busy.
    const int DocumentsPerChunk = 800;

    /// <exception cref="ArgumentException">
    /// A reference occurs twice, a document has not one text per field, or a field is not as <see cref="SearchField"/> asks.
    /// </exception>
    public static LunrIndex Build(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents) =>
        Build(fields, documents, DocumentsPerChunk);

    internal static LunrIndex Build(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents, int documentsPerChunk)
    {
        Check(fields, documents);
        var shares = documents.Chunk(documentsPerChunk).ToArray();
        var chunks = new IndexChunk[shares.Length];
        Parallel.For(0, shares.Length, i => chunks[i] = new IndexChunk(shares[i]));

        var vocabulary = new Vocabulary();
        var numbers = Array.ConvertAll(chunks, c => vocabulary.Add(c.Vocabulary));
        return new LunrIndex(fields, new IndexParts(
            [.. documents.Select(d => d.Ref)], [.. vocabulary.Terms], [.. vocabulary.Forms],
            [.. chunks.SelectMany(c => c.Lengths)], Merge(chunks, numbers)));
    }

    static Frequencies Merge(IndexChunk[] chunks, int[][] numbers)
    {
        var rows = Sums(chunks.Select(c => c.Lengths.Count));
        var items = Sums(chunks.Select(c => c.ItemCount));
        var whole = new Frequencies(new int[rows[^1] + 1], new int[items[^1]], new int[items[^1]]);
        Parallel.For(0, chunks.Length, i => chunks[i].CopyTo(whole, rows[i], items[i], numbers[i]));
        return whole;
    }

    static int[] Sums(IEnumerable<int> counts)
    {
        var sums = new List<int> { 0 };
        foreach (var count in counts) sums.Add(sums[^1] + count);
        return [.. sums];
    }

    static void Check(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents)
    {
        if (!fields.All(f => f.Boost > 0 && f.Name.Length > 0 && f.Name.All(char.IsAsciiLetterLower)))
            throw new ArgumentException("A field's name is of lower-case letters and its boost above 0.", nameof(fields));
        if (documents.FirstOrDefault(d => d.Texts.Length != fields.Length) is { } uneven)
            throw new ArgumentException($"{uneven.Ref} has not one text per field.", nameof(documents));
        if (documents.CountBy(d => d.Ref, StringComparer.Ordinal).FirstOrDefault(r => r.Value > 1) is { Key: { } twice })
            throw new ArgumentException($"The reference {twice} occurs twice.", nameof(documents));
    }
}
