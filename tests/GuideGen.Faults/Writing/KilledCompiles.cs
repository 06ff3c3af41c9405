using System.Diagnostics;

namespace GuideGen.Faults.Writing;

/// <summary>Kills compiles at moments drawn by lot, over their whole length, and looks at the site after each.</summary>
static class KilledCompiles
{
    const int Usual = 500;

    public static bool Run(TextWriter output, int times)
    {
        using var bench = new Bench();
        Tool.Run(bench.GuideOf("old"), bench.Site);
        bench.LayForeign();
        var (chance, counts, most) = (new Random(11), new SortedDictionary<string, int>(StringComparer.Ordinal), 0);
        var length = Length(bench);
        var lost = 0;
        for (var i = 0; i < (times == 0 ? Usual : times); i++)
        {
            var how = Kill(bench, i % 2 == 0 ? "new" : "old", chance.NextDouble() * length);
            var state = $"{how}, site {bench.State()}";
            counts[state] = counts.GetValueOrDefault(state) + 1;
            most = Math.Max(most, bench.Leftovers().Count);
            if (!bench.HasForeign()) lost++;
        }

        var (code, _) = Tool.Run(bench.GuideOf("new"), bench.Site);
        var left = bench.Leftovers();
        var isSound = code == 0 && left.Count == 0 && lost == 0 && bench.State() == "new" && bench.HasForeignInPlace() && !counts.Keys.Any(k => k.Contains("broken", StringComparison.Ordinal) || k.Contains("none", StringComparison.Ordinal));
        output.WriteLine("| after a compile that was | times |\n| --- | ---: |");
        foreach (var (state, count) in counts) output.WriteLine($"| {state} | {count} |");
        output.WriteLine($"| a file of somebody else's lost | {lost} |\n| most things left beside the site | {most} |\n| left after one more compile | {left.Count} |\n| all as it should be | {isSound} |");
        return isSound;
    }

    /// <summary>A little longer than a compile takes, so that some end by themselves.</summary>
    static double Length(Bench bench)
    {
        var watch = Stopwatch.StartNew();
        Tool.Run(bench.GuideOf("old"), bench.Site);
        return watch.Elapsed.TotalMilliseconds * 1.1;
    }

    static string Kill(Bench bench, string guide, double after)
    {
        using var process = Tool.Start(bench.GuideOf(guide), bench.Site);
        if (process.WaitForExit((int)after)) return "through";
        process.Kill();
        process.WaitForExit();
        return "killed";
    }
}
