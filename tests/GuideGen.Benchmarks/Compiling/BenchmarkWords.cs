using System.Globalization;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>What stands behind the name of a benchmark of whole guides.</summary>
static class BenchmarkWords
{
    /// <returns>The program to measure, null for the code of this run, and numbers of pages, none for the usual ones.</returns>
    public static (string? Program, int[] Sizes) Read(string[] words)
    {
        var program = words.FirstOrDefault(w => !int.TryParse(w, out _));
        return (program, [.. words.Where(w => w != program).Select(w => int.Parse(w, CultureInfo.InvariantCulture))]);
    }
}
