using System.Diagnostics;

namespace GuideGen.Benchmarks.Search;

/// <summary>Seconds on the clock, and seconds of the processor: on a busy machine only the second can be compared.</summary>
readonly record struct Effort(double Clock, double Processor)
{
    public static (T Result, Effort Effort) Of<T>(Func<T> work)
    {
        GC.Collect();
        var (before, clock) = (Process.GetCurrentProcess().TotalProcessorTime, Stopwatch.StartNew());
        var result = work();
        var processor = Process.GetCurrentProcess().TotalProcessorTime - before;
        return (result, new(clock.Elapsed.TotalSeconds, processor.TotalSeconds));
    }
}
