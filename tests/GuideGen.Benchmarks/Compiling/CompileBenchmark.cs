using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>
/// Compiles of guides of growing size, each in a process of its own so that start, peak memory and allocations are its own, and in
/// the same run, after it, the floor of <see cref="CompileFloor"/> over the same files. Then the same guide again, in the same folder, after
/// each edit that is tried.
/// </summary>
static class CompileBenchmark
{
    /// <summary>The words before the two folders when the benchmark starts itself for one compile, or for the floor alone.</summary>
    public const string ChildMark = "one-compile", AgainMark = "one-compile-again", FloorMark = "one-floor";

    const int Edits = 5;

    /// <summary>
    /// Between two looks at how much memory a program has taken at most, by how long it has run: looks each 10 ms took a thirtieth of both processors.
    /// </summary>
    static TimeSpan Pause(TimeSpan run) => TimeSpan.FromMilliseconds(10) + (run / 20);

    static readonly int[] Sizes = [100, 1_000, 10_000];

    /// <param name="words">The program that compiles, if it is not the code of this run, and other sizes than the usual ones.</param>
    public static async Task Run(string[] words, TextWriter output)
    {
        var (program, sizes) = BenchmarkWords.Read(words);
        await output.WriteLineAsync($"| pages | files | site, MB | whole process, s |{string.Concat(TriedEdit.All.Select(e => $" again: {e.Name}, s |"))} reading, s | ms a page | peak, MB | allocated, MB | floor, s: read, Markdown, YAML, template, index, write | of the floor | with a bare template |");
        await output.WriteLineAsync($"| ---: | ---: | ---: | ---: |{string.Concat(TriedEdit.All.Select(_ => " ---: |"))} ---: | ---: | ---: | ---: | :--- | ---: | ---: |");
        foreach (var size in sizes is [] ? Sizes : sizes) await output.WriteLineAsync(await Row(size, program));
    }

    /// <summary>One compile and the floor for it, told as JSON.</summary>
    public static void RunOne(string guide, string site, TextWriter output) => Run(guide, site, withFloor: true, output);

    public static void RunAgain(string guide, string site, TextWriter output) => Run(guide, site, withFloor: false, output);

    static void Run(string guide, string site, bool withFloor, TextWriter output)
    {
        var started = Process.GetCurrentProcess().StartTime;
        var clock = new Stages();
        var memory = FolderTarget.MemoryOf(site);
        var result = SiteCompiler.Compile(new FolderFiles(guide), ThemeFiles.BuiltIn, new FolderTarget(site, Environment.ProcessorCount, memory), clock, null, memory);
        var whole = (DateTime.Now - started).TotalSeconds;
        foreach (var finding in result.Findings.OrderByDescending(f => f.Severity == Severity.Error).Take(5)) Console.Error.WriteLine($"{finding.Span}: {finding.Rule.Id} {finding.Message}");
        if (!result.IsWritten) throw new InvalidOperationException("the generated guide has errors");
        using var process = Process.GetCurrentProcess();
        output.WriteLine(JsonSerializer.Serialize(new Measured(
            result.Files, whole, clock.Reading, process.PeakWorkingSet64 / 1e6, GC.GetTotalAllocatedBytes() / 1e6, withFloor ? CompileFloor.Of(guide, site) : null)));
    }

    public static void RunFloor(string guide, string site, TextWriter output) => output.WriteLine(JsonSerializer.Serialize(CompileFloor.Of(guide, site)));

    static async Task<string> Row(int size, string? program)
    {
        var folder = Directory.CreateTempSubdirectory("guidegen-compile-").FullName;
        try
        {
            var (guide, site) = (Path.Combine(folder, "guide"), Path.Combine(folder, "site"));
            WriteGuide(size, guide);
            var one = program is null ? await InChild<Measured>(ChildMark, guide, site) : await OfProgram(program, guide, site);
            var megabytes = new DirectoryInfo(site).EnumerateFiles("*", SearchOption.AllDirectories).Sum(f => f.Length) / 1e6;
            var again = TriedEdit.All.Select(_ => new List<double>()).ToList();
            for (var i = 0; i < Edits; i++)
            {
                foreach (var (edit, times) in TriedEdit.All.Zip(again)) times.Add(await Again(edit, i));
            }

            var floor = one.Floor!;
            return string.Create(CultureInfo.InvariantCulture,
                $"| {size:N0} | {one.Files:N0} | {megabytes:F1} | {one.Whole:F2} | {string.Join(" | ", again.Select(t => TriedEdit.Middle(t).ToString("F2", CultureInfo.InvariantCulture)))} | {one.Reading:F2} | {one.Whole * 1000 / size:F2} | {one.Peak:F0} | {one.Allocated:F0} " +
                $"| {floor.Sum:F2}: {floor.Read:F2}, {floor.Markdown:F2}, {floor.Yaml:F2}, {floor.Template:F2}, {floor.Index:F2}, {floor.Write:F2} | {one.Whole / floor.Sum:F2} | {one.Whole / floor.Bare:F2} |");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        async Task<double> Again(TriedEdit edit, int number)
        {
            var (guide, site) = (Path.Combine(folder, "guide"), Path.Combine(folder, "site"));
            var page = Path.Combine(guide, TriedEdit.Path);
            await File.WriteAllTextAsync(page, edit.Change(await File.ReadAllTextAsync(page), number));
            return (program is null ? await InChild<Measured>(AgainMark, guide, site) : await OfProgram(program, guide, site, withFloor: false)).Whole;
        }
    }

    static async Task<Measured> OfProgram(string program, string guide, string site, bool withFloor = true)
    {
        var clock = Stopwatch.StartNew();
        using var child = Process.Start(new ProcessStartInfo(program, ["compile", guide, "--out", site]) { RedirectStandardOutput = true })!;
        long peak = 0;
        while (!child.WaitForExit(Pause(clock.Elapsed))) peak = Math.Max(peak, PeakOf(child));
        var whole = clock.Elapsed.TotalSeconds;
        if (child.ExitCode != 0) throw new InvalidOperationException(await child.StandardOutput.ReadToEndAsync());
        return new(Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories).Count(), whole, null, peak / 1e6, null, withFloor ? await InChild<Floor>(FloorMark, guide, site) : null);
    }

    static long PeakOf(Process running)
    {
        try
        {
            running.Refresh();
            return running.PeakWorkingSet64;
        }
        catch (InvalidOperationException)
        {
            // It has ended just now.
            return 0;
        }
    }

    static async Task<T> InChild<T>(string mark, string guide, string site)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        foreach (var word in (string[])[mark, guide, site]) start.ArgumentList.Add(word);
        // As the tool itself runs; the other benchmarks look at code that has run for long.
        start.Environment["DOTNET_TieredPGO"] = "0";
        using var child = Process.Start(start)!;
        var said = await child.StandardOutput.ReadToEndAsync();
        await child.WaitForExitAsync();
        return JsonSerializer.Deserialize<T>(said)!;
    }

    /// <summary>Writes the guide of so many pages into a folder, to try things by hand.</summary>
    public static void WriteGuide(int pages, string folder)
    {
        foreach (var (path, bytes) in GuideGenerator.Guide(pages))
        {
            var file = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, bytes);
        }
    }

    /// <param name="Whole">Seconds from the start of the process to the written site.</param>
    /// <param name="Reading">Seconds from the start of the compile until the guide is read and inspected; not known of a program.</param>
    /// <param name="Peak">Largest working set, MB.</param>
    /// <param name="Allocated">MB; not known of a program.</param>
    sealed record Measured(int Files, double Whole, double? Reading, double Peak, double? Allocated, Floor? Floor);

    sealed class Stages : IProgress<CompileStage>
    {
        readonly Stopwatch clock = Stopwatch.StartNew();

        public double Reading { get; private set; }

        public void Report(CompileStage value)
        {
            if (value == CompileStage.Writing) Reading = clock.Elapsed.TotalSeconds;
        }
    }
}
