using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace GuideGen.Search.Lunr;

/// <summary>Builds what lunr.js 2.3.9 builds with its default pipeline, BM25 constants and no metadata.</summary>
public static class LunrIndexBuilder
{
    // Each chunk stems its own words, so chunks are few; but with fewer than ten, one processor waits for the longest.
    const int MostInChunk = 800, FewestInChunk = 50, Chunks = 10;

    /// <exception cref="ArgumentException">
    /// A reference occurs twice, a document has not one text per field, or a field is not as <see cref="SearchField"/> asks.
    /// </exception>
    public static LunrIndex Build(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents) =>
        Build(fields, documents.Length, i => documents[i]);

    /// <inheritdoc cref="Build(ImmutableArray{SearchField}, ImmutableArray{LunrDocument})"/>
    /// <param name="count">How many documents there are.</param>
    /// <param name="make">Gives the document of a number from 0 on, asked once for each and side by side: the texts of all would fill a tenth of a gigabyte.</param>
    public static LunrIndex Build(ImmutableArray<SearchField> fields, int count, Func<int, LunrDocument> make) => Build(fields, count, make, Math.Clamp(count / Chunks, FewestInChunk, MostInChunk));

    internal static LunrIndex Build(ImmutableArray<SearchField> fields, int count, Func<int, LunrDocument> make, int documentsPerChunk)
    {
        Check(fields);
        var refs = new string[count];
        var chunks = new IndexChunk[(count + documentsPerChunk - 1) / documentsPerChunk];
        string? uneven = null;
        Parallel.For(0, chunks.Length, i => chunks[i] = new IndexChunk(Share(i)));
        if (uneven is not null) throw new ArgumentException($"{uneven} has not one text per field.", nameof(make));
        Check(refs);

        var vocabulary = new Vocabulary();
        var numbers = Array.ConvertAll(chunks, c => vocabulary.Add(c.Terms, c.Forms));
        return new LunrIndex(fields, new IndexParts(
            ImmutableCollectionsMarshal.AsImmutableArray(refs), [.. vocabulary.Terms], [.. vocabulary.Forms],
            [.. chunks.SelectMany(c => c.Lengths)], Merge(chunks, numbers)));

        LunrDocument[] Share(int chunk)
        {
            var first = chunk * documentsPerChunk;
            var documents = new LunrDocument[Math.Min(documentsPerChunk, count - first)];
            for (var i = 0; i < documents.Length; i++)
            {
                documents[i] = make(first + i);
                refs[first + i] = documents[i].Ref;
                if (documents[i].Texts.Length != fields.Length) uneven = documents[i].Ref;
            }

            return documents;
        }
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

    static void Check(ImmutableArray<SearchField> fields)
    {
        if (!fields.All(f => f.Boost > 0 && f.Name.Length > 0 && f.Name.All(char.IsAsciiLetterLower)))
            throw new ArgumentException("A field's name is of lower-case letters and its boost above 0.", nameof(fields));
    }

    static void Check(string[] refs)
    {
        if (refs.CountBy(r => r, StringComparer.Ordinal).FirstOrDefault(r => r.Value > 1) is { Key: { } twice })
            throw new ArgumentException($"The reference {twice} occurs twice.", nameof(refs));
    }
}
