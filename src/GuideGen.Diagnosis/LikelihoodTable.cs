using System.Collections.Immutable;

namespace GuideGen.Diagnosis;

/// <summary>Rows of one thing, such as the outcomes of a check: its columns are the causes.</summary>
internal static class LikelihoodTable
{
    /// <summary>One column for all causes that have no place in any row.</summary>
    public const int Usual = -1;

    /// <param name="change">From the place of a cause, or <see cref="Usual"/>, and its column to the new one.</param>
    /// <param name="places">Causes whose columns change in a way of their own, beside those with a value of their own.</param>
    /// <exception cref="ArgumentException">A row has causes of more than one kind.</exception>
    public static ImmutableArray<LikelihoodRow> Map(
        ImmutableArray<LikelihoodRow> rows, Func<int, double[], double[]> change, IEnumerable<int>? places = null)
    {
        if (rows.IsEmpty)
            return rows;
        if (rows.Any(r => r.Usual.Length != 1))
            throw new ArgumentException("The causes of a table are of one kind.", nameof(rows));
        double[] usual = change(Usual, [.. rows.Select(r => r.Usual[0])]);
        SortedSet<int> own = [.. rows.SelectMany(r => r.Places.ToArray()), .. places ?? []];
        (int Place, double[] Column)[] columns = [.. own.Select(c => (c, change(c, [.. rows.Select(r => r[c])])))];
        return [.. rows.Select((row, r) => LikelihoodRow.Of(row.Count, usual[r], columns.Select(c => (c.Place, c.Column[r]))))];
    }
}
