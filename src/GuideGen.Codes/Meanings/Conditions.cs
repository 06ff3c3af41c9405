using System.Collections.Frozen;
using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>The closed list of conditions.</summary>
public static class Conditions
{
    static readonly FrozenDictionary<string, ConditionInfo> ByKey = ConditionTable.Rows.ToFrozenDictionary(c => c.Key, StringComparer.Ordinal);

    public static ImmutableArray<ConditionInfo> All => ConditionTable.Rows;

    /// <exception cref="KeyNotFoundException">The list has no such condition: the catalogue's source is wrong.</exception>
    public static ConditionInfo Get(string key) => ByKey[key];
}
