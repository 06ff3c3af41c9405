using System.Collections.Immutable;

namespace GuideGen.Diagnosis;

/// <summary>Preparations as bits, so that 'already done on this path' is one number.</summary>
internal sealed class SetupLedger
{
    const int Most = 60;

    readonly ImmutableArray<Setup> setups;
    readonly Dictionary<string, int> bits;

    /// <param name="setups">All preparations of the guide.</param>
    /// <param name="used">Those that the problem at hand mentions; the others get no bit.</param>
    public SetupLedger(IEnumerable<Setup> setups, IEnumerable<string> used)
    {
        HashSet<string> wanted = new(used, StringComparer.Ordinal);
        this.setups = [.. setups.Where(s => wanted.Contains(s.Id)).OrderBy(s => s.Id, StringComparer.Ordinal)];
        bits = this.setups.Select((s, i) => (s.Id, i)).ToDictionary(s => s.Id, s => s.i, StringComparer.Ordinal);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(this.setups.Length, Most, nameof(setups));
    }

    public int Count => setups.Length;

    public long MaskOf(ImmutableArray<string> ids) => ids.Aggregate(0L, (mask, id) => mask | (1L << bits[id]));

    /// <summary>What the preparations in <paramref name="needed"/> take that are not yet in <paramref name="done"/>.</summary>
    public Effort Missing(long needed, long done)
    {
        Effort sum = Effort.None;
        for (long open = needed & ~done; open != 0; open &= open - 1)
            sum += setups[System.Numerics.BitOperations.TrailingZeroCount(open)].Effort;
        return sum;
    }
}
