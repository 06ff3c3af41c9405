using System.Globalization;

namespace GuideGen.Search.Lunr;

/// <summary>
/// The order in which a script lists an object's keys (ECMA-262 OrdinaryOwnPropertyKeys): array indexes first, by value,
/// then the others as they were added. A guide whose pages are called 2016 and 2012 meets this.
/// </summary>
static class ScriptKeys
{
    /// <summary>Rank of each key, or null when they are listed as added.</summary>
    public static int[]? Ranks(IReadOnlyList<string> keys)
    {
        if (!keys.Any(k => ArrayIndex(k) is not null)) return null;
        var ranks = new int[keys.Count];
        var order = Enumerable.Range(0, keys.Count).OrderBy(i => ArrayIndex(keys[i]) ?? uint.MaxValue);
        foreach (var (rank, key) in order.Index()) ranks[key] = rank;
        return ranks;
    }

    public static int[] Ordered(ReadOnlySpan<int> items, int[] ranks)
    {
        var ordered = items.ToArray();
        Array.Sort(Array.ConvertAll(ordered, i => ranks[i]), ordered);
        return ordered;
    }

    static uint? ArrayIndex(string key) =>
        uint.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value < uint.MaxValue
        && (key.Length == 1 || key[0] != '0')
            ? value : null;
}
