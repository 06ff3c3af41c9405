using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Readings;

/// <summary>The limits at one key, for example ohms at degrees Celsius.</summary>
public readonly record struct LimitRow(double Key, double Low, double High);

/// <summary>Limits that move with a condition, such as a sensor's resistance with its temperature.</summary>
public sealed class LimitTable
{
    readonly ValueTable low;
    readonly ValueTable high;
    readonly ImmutableArray<double> keys;

    public LimitTable(ImmutableArray<LimitRow> rows, TableScale scale)
    {
        low = new(rows.Select(r => new TableRow(r.Key, r.Low)), scale);
        high = new(rows.Select(r => new TableRow(r.Key, r.High)), scale);
        keys = [.. rows.Select(r => r.Key)];
    }

    /// <summary>
    /// The limits when the key is only known to within plus or minus <paramref name="keyUncertainty"/>: the widest
    /// that any key in that range allows, since a warm or a cold sensor is no fault. Null when that range leaves the
    /// table: nothing is extrapolated.
    /// </summary>
    public Limits? At(double key, double keyUncertainty = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(keyUncertainty);
        double from = key - keyUncertainty, to = key + keyUncertainty;
        if (low.ValueAt(from) is null || low.ValueAt(to) is null)
            return null;
        // Between two rows the limits run one way, so the extremes lie at the ends or at a row.
        ImmutableArray<double> candidates = [from, to, .. keys.Where(k => k > from && k < to)];
        return new(candidates.Min(k => low.ValueAt(k)), candidates.Max(k => high.ValueAt(k)));
    }
}
