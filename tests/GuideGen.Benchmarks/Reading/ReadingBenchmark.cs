using System.Diagnostics;
using System.Globalization;
using GuideGen.Codes.Reading;

namespace GuideGen.Benchmarks.Reading;

/// <summary>Loose reading of ten megabytes of hostile text, and of one: the ratio tells whether time grows with length alone.</summary>
static class ReadingBenchmark
{
    const int Large = 10_000_000;
    const int Runs = 3;

    public static Task Run(TextWriter output)
    {
        output.WriteLine("| text | codes | 10 MB, ms | CPU, ms | 10 MB over 1 MB |");
        output.WriteLine("| --- | ---: | ---: | ---: | ---: |");
        foreach (var (name, text) in HostileTexts.OfSize(Large)) WriteRow(output, name, text);
        return Task.CompletedTask;
    }

    static void WriteRow(TextWriter output, string name, string text)
    {
        var (few, _, _) = Measure(text[..(Large / 10)]);
        var (all, cpu, codes) = Measure(text);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {codes} | {all:F0} | {cpu:F0} | {all / few:F1} |"));
    }

    /// <returns>The best of some runs.</returns>
    static (double Wall, double Cpu, int Codes) Measure(string text)
    {
        var (wall, cpu, codes) = (double.MaxValue, double.MaxValue, 0);
        for (var i = 0; i < Runs; i++)
        {
            GC.Collect();
            var (clock, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
            codes = CodeReader.Read(text, ReadingPlace.FreeText).Finds.Length;
            wall = Math.Min(wall, clock.Elapsed.TotalMilliseconds);
            cpu = Math.Min(cpu, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
        }

        return (wall, cpu, codes);
    }
}
