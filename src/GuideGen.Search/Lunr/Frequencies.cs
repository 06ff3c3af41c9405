namespace GuideGen.Search.Lunr;

/// <summary>
/// A sparse table of counts, row by row: row r holds the items <c>Items[Starts[r]..Starts[r + 1]]</c>, ascending, and how
/// often each occurs.
/// </summary>
sealed record Frequencies(int[] Starts, int[] Items, int[] Counts)
{
    /// <summary>The table of term and field by document, made from field text by term, in one pass of counting sort.</summary>
    public Frequencies Inverted(int terms, int fields)
    {
        var starts = new int[terms * fields + 1];
        for (var text = 0; text < Starts.Length - 1; text++)
            for (var i = Starts[text]; i < Starts[text + 1]; i++)
                starts[Items[i] * fields + text % fields + 1]++;
        for (var row = 1; row < starts.Length; row++) starts[row] += starts[row - 1];

        var next = starts.ToArray();
        var (items, counts) = (new int[Items.Length], new int[Items.Length]);
        for (var text = 0; text < Starts.Length - 1; text++)
            for (var i = Starts[text]; i < Starts[text + 1]; i++)
            {
                var at = next[Items[i] * fields + text % fields]++;
                items[at] = text / fields;
                counts[at] = Counts[i];
            }
        return new Frequencies(starts, items, counts);
    }
}
