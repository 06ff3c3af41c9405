using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace GuideGen.Guide;

/// <summary>Does many things side by side; the first fault is thrown as it was, as a plain loop would.</summary>
/// <remarks>
/// Not by a parallel query: one that keeps the order waits until all of its workers run at once, and within another one, on two
/// processors, the runtime has none left and takes half a second to think of more. Here whoever asks also works.
/// </remarks>
public static class SideBySide
{
    /// <summary>As a number of threads: one for each processor.</summary>
    public const int AsManyAsThereAre = -1;

    public static void ForEach<T>(IEnumerable<T> items, int threads, Action<T> action) =>
        AsAPlainLoop(() => Parallel.ForEach(items, new ParallelOptions { MaxDegreeOfParallelism = threads }, action));

    /// <summary>What is made of each item, in the order of the items. One after the other goes to whoever is free.</summary>
    public static TMade[] Map<T, TMade>(IReadOnlyList<T> items, Func<T, TMade> make)
    {
        var made = new TMade[items.Count];
        AsAPlainLoop(() => Parallel.ForEach(Partitioner.Create(Enumerable.Range(0, items.Count), EnumerablePartitionerOptions.NoBuffering), i => made[i] = make(items[i])));
        return made;
    }

    static void AsAPlainLoop(Action loop)
    {
        try
        {
            loop();
        }
        catch (AggregateException faults)
        {
            ExceptionDispatchInfo.Throw(faults.InnerExceptions[0]);
        }
    }
}
