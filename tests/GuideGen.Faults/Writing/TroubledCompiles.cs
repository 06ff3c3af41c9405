using System.Diagnostics;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Faults.Writing;

/// <summary>Compiles on a full volume, into a place that cannot be written, two at once, under other locales and clocks, and under a reader's eyes.</summary>
static class TroubledCompiles
{
    static readonly string[] Locales = ["C", "tr_TR.UTF-8", "ar_SA.UTF-8", "fa_IR.UTF-8", "th_TH.UTF-8", "de_DE.UTF-8", "xx_XX"];

    static readonly DateOnly[] Days = [DateOnly.MinValue, new(1970, 1, 1), new(2038, 1, 19), DateOnly.MaxValue];

    public static bool Run(TextWriter output, int times)
    {
        using var bench = new Bench();
        var rows = new List<(string Fault, string Outcome, bool IsGood)>();
        rows.AddRange(Volume(bench));
        rows.AddRange(Enumerable.Range(0, Math.Max(1, times)).Select(_ => Two(bench)).ToList());
        rows.Add(Watched(bench));
        rows.AddRange(Locales.Select(locale => InLocale(bench, locale)));
        rows.AddRange(Days.Select(day => OnDay(bench, day)));
        output.WriteLine("| fault | outcome | holds |\n| --- | --- | --- |");
        foreach (var (fault, outcome, isGood) in rows) output.WriteLine($"| {fault} | {outcome} | {isGood} |");
        return rows.All(r => r.IsGood);
    }

    /// <summary>A small volume in memory: what is full, or may not be written, is so for root as well.</summary>
    static IEnumerable<(string, string, bool)> Volume(Bench bench)
    {
        var place = Path.GetDirectoryName(bench.Site)!;
        Directory.CreateDirectory(place);
        if (Shell("mount", "-t", "tmpfs", "-o", "size=16m", "tmpfs", place) != 0)
        {
            yield return ("volume of its own", "not tried: mounting is not allowed here", true);
            yield break;
        }

        try
        {
            Tool.Run(bench.GuideOf("old"), bench.Site);
            foreach (var share in new[] { 0.02, 0.3, 0.6, 0.9, 0.999 }) yield return Full(bench, share);
            Shell("mount", "-o", "remount,ro", place);
            var (code, said) = Tool.Run(bench.GuideOf("new"), bench.Site);
            yield return ("read-only volume", $"exit {code}, site {bench.State()}: {said.Replace(bench.PathTo(""), "", StringComparison.Ordinal)}", code == 3 && bench.State() == "old");
            Shell("mount", "-o", "remount,rw", place);
            (code, _) = Tool.Run(bench.GuideOf("new"), bench.Site);
            yield return ("the same volume, writable again", $"exit {code}, site {bench.State()}, {bench.Leftovers().Count} left", code == 0 && bench.State() == "new" && bench.Leftovers().Count == 0);
        }
        finally
        {
            Shell("umount", place);
        }
    }

    /// <param name="share">Of what the new site needs, how much fits onto the volume.</param>
    static (string, string, bool) Full(Bench bench, double share)
    {
        // What is taken over from the old site needs no room.
        bench.Forget();
        var filler = Path.Combine(Path.GetDirectoryName(bench.Site)!, "filler");
        var needed = new DirectoryInfo(bench.Site).EnumerateFiles("*", SearchOption.AllDirectories).Sum(f => (f.Length + 4095) / 4096 * 4096);
        var free = new DriveInfo(Path.GetDirectoryName(bench.Site)!).AvailableFreeSpace;
        using (var file = File.Create(filler)) file.Write(new byte[Math.Max(0, free - (long)(needed * share))]);
        var (code, said) = Tool.Run(bench.GuideOf("new"), bench.Site);
        File.Delete(filler);
        var (state, left) = (bench.State(), bench.Leftovers().Count);
        return (string.Create(System.Globalization.CultureInfo.InvariantCulture, $"volume full at {share:P1} of the new site"), $"exit {code}, site {state}, {left} left: {said.Replace(bench.PathTo(""), "", StringComparison.Ordinal)}", code == 3 && state == "old" && left == 0);
    }

    static (string, string, bool) Two(Bench bench)
    {
        Tool.Run(bench.GuideOf("old"), bench.Site);
        var both = new[] { Tool.Start(bench.GuideOf("new"), bench.Site), Tool.Start(bench.GuideOf("new"), bench.Site) }.Select(Tool.End).ToList();
        var codes = string.Join(" and ", both.Select(b => b.Code).Order());
        return ("two compiles at once", $"exit {codes}, site {bench.State()}, {bench.Leftovers().Count} left", both.Any(b => b.Code == 0) && both.All(b => b.Code is 0 or 2 or 3) && bench.State() == "new" && bench.Leftovers().Count == 0);
    }

    /// <summary>Reads the list of files, and each file on it, over and over while a compile replaces them.</summary>
    static (string, string, bool) Watched(Bench bench)
    {
        Tool.Run(bench.GuideOf("old"), bench.Site);
        var (looks, gone) = (0, 0);
        for (var i = 0; i < 6; i++)
        {
            var process = Tool.Start(bench.GuideOf(i % 2 == 0 ? "new" : "old"), bench.Site);
            for (; !process.HasExited; looks++)
            {
                if (!File.Exists(Path.Combine(bench.Site, "index.html"))) gone++;
            }

            Tool.End(process);
        }

        return ("read while it is replaced, 6 times", $"{looks} looks, the first page was missing in {gone}", gone == 0);
    }

    static (string, string, bool) InLocale(Bench bench, string locale)
    {
        var place = bench.PathTo("locale-" + locale);
        var (code, _) = Tool.Run(bench.GuideOf("old"), place, ("LANG", locale), ("LC_ALL", locale), ("LANGUAGE", locale), ("TZ", "Pacific/Kiritimati"));
        var isSame = code == 0 && Bench.IsSame(Bench.Bytes(place), bench.Old);
        return ($"locale {locale}", $"exit {code}, {(isSame ? "the same bytes" : "other bytes")}", isSame);
    }

    static (string, string, bool) OnDay(Bench bench, DateOnly day)
    {
        var (first, second) = (new MemoryTarget(1), new MemoryTarget(1));
        var found = Compile(bench, first, day);
        Compile(bench, second, null);
        var isSame = first.Files.Count == 0 ? found.Any(f => f.Rule.Severity == GuideGen.Guide.Findings.Severity.Error) : first.Files.All(f => second.Files[f.Key].AsSpan().SequenceEqual(f.Value));
        var outcome = first.Files.Count == 0 ? "refused: " : "the same bytes; found: ";
        return (string.Create(System.Globalization.CultureInfo.InvariantCulture, $"clock at {day:yyyy-MM-dd}"), outcome + string.Join(", ", found.Select(f => f.Rule.Id).Distinct()), isSame);
    }

    static System.Collections.Immutable.ImmutableArray<GuideGen.Guide.Findings.Finding> Compile(Bench bench, MemoryTarget target, DateOnly? day) =>
        SiteCompiler.Compile(new FolderFiles(bench.GuideOf("old")), ThemeFiles.BuiltIn, target, new Progress<CompileStage>(), day).Findings;

    static int Shell(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode;
    }
}
