using System.Runtime.ExceptionServices;

namespace GuideGen.Site.Writing;

/// <summary>Does many things side by side; the first fault is thrown as it was, as a plain loop would.</summary>
static class SideBySide
{
    public static void ForEach<T>(IEnumerable<T> items, int threads, Action<T> action)
    {
        try
        {
            Parallel.ForEach(items, new ParallelOptions { MaxDegreeOfParallelism = threads }, action);
        }
        catch (AggregateException faults)
        {
            ExceptionDispatchInfo.Throw(faults.InnerExceptions[0]);
        }
    }
}
