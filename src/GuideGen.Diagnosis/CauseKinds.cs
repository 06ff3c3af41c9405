using System.Collections.Immutable;

namespace GuideGen.Diagnosis;

/// <summary>Which causes are of one kind: they share the usual value of every row.</summary>
internal sealed class CauseKinds
{
    readonly int[]? kinds;

    /// <summary>All of one kind.</summary>
    public CauseKinds(int count) => (Count, Sizes) = (count, [count]);

    /// <param name="kinds">The kind of each cause, numbered from 0 without a gap.</param>
    public CauseKinds(int[] kinds)
    {
        (this.kinds, Count) = (kinds, kinds.Length);
        Members = [.. Enumerable.Range(0, Count).GroupBy(Of).OrderBy(g => g.Key).Select(g => g.ToImmutableArray())];
        Sizes = [.. Members.Select(m => m.Length)];
    }

    public int Count { get; }

    /// <summary>Causes of each kind.</summary>
    public ImmutableArray<int> Sizes { get; }

    /// <summary>The causes of each kind, where there is more than one kind.</summary>
    public ImmutableArray<ImmutableArray<int>> Members { get; } = [];

    public int Of(int cause) => kinds is null ? 0 : kinds[cause];
}
