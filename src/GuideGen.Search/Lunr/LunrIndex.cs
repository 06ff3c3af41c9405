using System.Collections.Immutable;

namespace GuideGen.Search.Lunr;

/// <summary>
/// The index that lunr.js would build: per field text its terms and their frequencies, and the same turned round. A term
/// is known by its index, the order of first appearance; a field text by document * fields + field.
/// </summary>
public sealed class LunrIndex
{
    internal LunrIndex(ImmutableArray<SearchField> fields, IndexParts parts)
    {
        Fields = fields;
        Refs = parts.Refs;
        Terms = parts.Terms;
        Forms = parts.Forms;
        Lengths = parts.Lengths;
        ByTerm = parts.ByText.Inverted(Terms.Length, fields.Length);
        // Turned round twice, the terms of each text are in ascending order, and no row had to be sorted.
        ByText = ByTerm.Inverted(Refs.Length, fields.Length);
        AverageLengths = Enumerable.Range(0, fields.Length).Select(AverageLength).ToImmutableArray();
        SortedTerms = Sorted(Terms);
    }

    public ImmutableArray<SearchField> Fields { get; }

    public ImmutableArray<string> Refs { get; }

    /// <summary>Stems by term index. One may be empty: a token without letters or digits trims to nothing and lunr keeps it.</summary>
    public ImmutableArray<string> Terms { get; }

    /// <summary>For each term the shortest word it stands for: what to show a reader in the stem's place.</summary>
    public ImmutableArray<string> Forms { get; }

    /// <summary>Terms per field text, repeats counted, stop words not.</summary>
    internal int[] Lengths { get; }

    internal ImmutableArray<double> AverageLengths { get; }

    /// <summary>Row: field text; item: term index.</summary>
    internal Frequencies ByText { get; }

    /// <summary>Row: term * fields + field; item: document.</summary>
    internal Frequencies ByTerm { get; }

    /// <summary>Term indexes in the order of a script's sort: by UTF-16 code unit.</summary>
    internal int[] SortedTerms { get; }

    internal double InverseDocumentFrequency(int term)
    {
        var first = term * Fields.Length;
        return Bm25.InverseDocumentFrequency(ByTerm.Starts[first + Fields.Length] - ByTerm.Starts[first], Refs.Length);
    }

    double AverageLength(int field)
    {
        long sum = 0;
        for (var text = field; text < Lengths.Length; text += Fields.Length) sum += Lengths[text];
        return (double)sum / Refs.Length;
    }

    static int[] Sorted(ImmutableArray<string> terms)
    {
        var order = Enumerable.Range(0, terms.Length).ToArray();
        Array.Sort(terms.ToArray(), order, StringComparer.Ordinal);
        return order;
    }
}
