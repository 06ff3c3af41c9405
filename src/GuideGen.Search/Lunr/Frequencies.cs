namespace GuideGen.Search.Lunr;

/// <summary>
/// A sparse table of counts, row by row: row r holds the items <c>Items[Starts[r]..Starts[r + 1]]</c> and how often each
/// occurs.
/// </summary>
sealed record Frequencies(int[] Starts, int[] Items, int[] Counts)
{
    /// <summary>
    /// Rows are x * fields + field with items y; the result has rows y * fields + field with items x, ascending: from
    /// documents to terms or back, by counting sort.
    /// </summary>
    public Frequencies Inverted(int distinctItems, int fields)
    {
        var starts = new int[distinctItems * fields + 1];
        for (var row = 0; row < Starts.Length - 1; row++)
            for (var i = Starts[row]; i < Starts[row + 1]; i++)
                starts[Items[i] * fields + row % fields + 1]++;
        for (var i = 1; i < starts.Length; i++) starts[i] += starts[i - 1];

        var ends = starts.ToArray();
        var (items, counts) = (new int[Items.Length], new int[Items.Length]);
        for (var row = 0; row < Starts.Length - 1; row++)
            for (var i = Starts[row]; i < Starts[row + 1]; i++)
            {
                var at = ends[Items[i] * fields + row % fields]++;
                items[at] = row / fields;
                counts[at] = Counts[i];
            }
        return new Frequencies(starts, items, counts);
    }
}
