using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>The closed list of conditions.</summary>
public static class Conditions
{
    // A plain dictionary: a frozen one takes longer to build than all its look-ups take together.
    static readonly Dictionary<string, ConditionInfo> ByKey = ConditionTable.Rows.ToDictionary(c => c.Key, StringComparer.Ordinal);

    public static ImmutableArray<ConditionInfo> All => ConditionTable.Rows;

    /// <exception cref="KeyNotFoundException">The list has no such condition: the catalogue's source is wrong.</exception>
    public static ConditionInfo Get(string key) => ByKey[key];
}
