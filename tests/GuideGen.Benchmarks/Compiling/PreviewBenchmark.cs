using System.Diagnostics;
using System.Globalization;
using GuideGen.Guide.Loading;
using GuideGen.Site.Preview;
using GuideGen.Site.Rendering;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>
/// How long an author waits for an edited page in a preview, from saving it: the edit is noticed, the guide is read anew, the open page is
/// told and asked for again, as a browser does it.
/// </summary>
static class PreviewBenchmark
{
    const int Edits = 15;
    static readonly int[] Sizes = [100, 1_000, 10_000];

    /// <param name="words">The program that shows the preview, if it is not the code of this run, and other sizes than the usual ones.</param>
    public static async Task Run(string[] words, TextWriter output)
    {
        var (program, sizes) = BenchmarkWords.Read(words);
        await output.WriteLineAsync($"| pages |{string.Concat(TriedEdit.All.Select(e => $" {e.Name}, ms: middle | most |"))}");
        await output.WriteLineAsync($"| ---: |{string.Concat(TriedEdit.All.Select(_ => " ---: | ---: |"))}");
        foreach (var size in sizes is [] ? Sizes : sizes)
        {
            var folder = Directory.CreateTempSubdirectory();
            try
            {
                CompileBenchmark.WriteGuide(size, folder.FullName);
                await output.WriteLineAsync(program is null ? await RowHere(size, folder.FullName) : await RowOf(program, size, folder.FullName));
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        }
    }

    static async Task<string> RowOf(string program, int size, string folder)
    {
        using var child = Process.Start(new ProcessStartInfo(program, ["preview", folder]) { RedirectStandardOutput = true })!;
        try
        {
            var said = "";
            while (!said.StartsWith("http", StringComparison.Ordinal))
                said = await child.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("the program shows no preview");
            return await Row(size, folder, new Uri(said.Split(' ')[0]));
        }
        finally
        {
            child.Kill();
            await child.WaitForExitAsync();
        }
    }

    static async Task<string> RowHere(int size, string folder)
    {
        using var watcher = new GuideWatcher(folder);
        using var end = new CancellationTokenSource();
        await using var server = PreviewServer.Start(() => new FolderFiles(folder, TimeProvider.System), ThemeFiles.BuiltIn);
        var following = Follow();
        var row = await Row(size, folder, server.Address);
        await end.CancelAsync();
        await following;
        return row;

        async Task Follow()
        {
            try
            {
                while (true)
                {
                    await watcher.Next(end.Token);
                    server.Refresh();
                }
            }
            catch (OperationCanceledException)
            {
                // All is measured.
            }
        }
    }

    static async Task<string> Row(int size, string folder, Uri preview)
    {
        var path = Path.Combine(folder, TriedEdit.Path);
        var text = await File.ReadAllTextAsync(path);
        using var client = new HttpClient { BaseAddress = preview };
        using var news = new StreamReader(await client.GetStreamAsync(new Uri("_preview/events", UriKind.Relative)));
        await Hear();
        var row = string.Create(CultureInfo.InvariantCulture, $"| {size} |");
        foreach (var edit in TriedEdit.All)
        {
            var times = await Times(edit);
            row += string.Create(CultureInfo.InvariantCulture, $" {TriedEdit.Middle(times):F0} | {times.Max():F0} |");
        }

        return row;

        async Task<List<double>> Times(TriedEdit edit)
        {
            var times = new List<double>();
            for (var i = 0; i < Edits; i++)
            {
                var clock = Stopwatch.StartNew();
                await File.WriteAllTextAsync(path, edit.Change(text, i));
                // A file that is still being written may be noticed twice.
                do await Hear();
                while (!(await client.GetStringAsync(new Uri("faults/fault-0-0.html", UriKind.Relative))).Contains(TriedEdit.Mark(i), StringComparison.Ordinal));
                times.Add(clock.Elapsed.TotalMilliseconds);
            }

            return times;
        }

        async Task Hear()
        {
            string? line;
            do line = await news.ReadLineAsync() ?? throw new InvalidOperationException("the preview has ended");
            while (!line.StartsWith("data:", StringComparison.Ordinal));
        }
    }
}
