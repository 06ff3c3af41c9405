using System.Diagnostics;
using System.Globalization;
using GuideGen.Codes;

namespace GuideGen.Benchmarks.Reading;

/// <summary>What the catalogue of meanings costs: its size in the assembly, and its loading for the first time and again.</summary>
static class CatalogueBenchmark
{
    const int Runs = 51;

    public static Task Run(TextWriter output)
    {
        var first = Measure();
        var again = Enumerable.Range(0, Runs).Select(_ => Measure()).Order().ToList();
        output.WriteLine("| embedded, bytes | first load in a process, ms | load, median ms | codes |");
        output.WriteLine("| ---: | ---: | ---: | ---: |");
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"| {EmbeddedBytes()} | {first:F1} | {again[Runs / 2]:F2} | {CodeCatalogue.All.Length} |"));
        return Task.CompletedTask;
    }

    static double Measure()
    {
        var clock = Stopwatch.StartNew();
        CatalogueData.Load();
        return clock.Elapsed.TotalMilliseconds;
    }

    static long EmbeddedBytes()
    {
        var assembly = typeof(CodeCatalogue).Assembly;
        return assembly.GetManifestResourceNames().Sum(n => assembly.GetManifestResourceStream(n)!.Length);
    }
}
