using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Readings;

/// <summary>One row: a value that belongs to a key, for example ohms to degrees Celsius.</summary>
public readonly record struct TableRow(double Key, double Value);

/// <summary>A table of values over a key, read between its rows and never beyond them.</summary>
public sealed class ValueTable
{
    readonly ImmutableArray<TableRow> rows;
    readonly TableScale scale;

    /// <exception cref="ArgumentException">
    /// No rows, two rows with one key, or a value or temperature that has no logarithm or inverse.
    /// </exception>
    public ValueTable(IEnumerable<TableRow> rows, TableScale scale)
    {
        this.rows = [.. rows.OrderBy(r => r.Key)];
        this.scale = scale;
        if (this.rows.IsEmpty || this.rows.Zip(this.rows.Skip(1), (a, b) => a.Key == b.Key).Any(same => same))
            throw new ArgumentException("A table has rows, each key once.", nameof(rows));
        if (scale == TableScale.LogOverInverseKelvin
            && this.rows.Any(r => r.Value <= 0 || Scale.Kelvin(r.Key) <= 0))
            throw new ArgumentException("Values above 0 at temperatures above absolute zero.", nameof(rows));
    }

    /// <summary>The value at a key; null outside the table.</summary>
    public double? ValueAt(double key)
    {
        for (int i = 0; i < rows.Length; i++)
        {
            if (rows[i].Key == key)
                return rows[i].Value;
            if (i + 1 < rows.Length && key > rows[i].Key && key < rows[i + 1].Key)
                return scale.ValueOf(Between(
                    scale.OfKey(key),
                    (scale.OfKey(rows[i].Key), scale.OfValue(rows[i].Value)),
                    (scale.OfKey(rows[i + 1].Key), scale.OfValue(rows[i + 1].Value))));
        }

        return null;
    }

    /// <summary>The key at a value, in the first pair of rows that has it between them; null outside the table.</summary>
    public double? KeyAt(double value)
    {
        for (int i = 0; i < rows.Length; i++)
        {
            if (rows[i].Value == value)
                return rows[i].Key;
            if (i + 1 < rows.Length && (value - rows[i].Value) * (value - rows[i + 1].Value) < 0)
                return scale.KeyOf(Between(
                    scale.OfValue(value),
                    (scale.OfValue(rows[i].Value), scale.OfKey(rows[i].Key)),
                    (scale.OfValue(rows[i + 1].Value), scale.OfKey(rows[i + 1].Key))));
        }

        return null;
    }

    static double Between(double x, (double X, double Y) from, (double X, double Y) to) =>
        from.Y + (to.Y - from.Y) * (x - from.X) / (to.X - from.X);
}
