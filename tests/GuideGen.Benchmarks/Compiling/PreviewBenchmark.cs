using System.Diagnostics;
using System.Globalization;
using GuideGen.Guide.Loading;
using GuideGen.Site.Preview;
using GuideGen.Site.Rendering;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>How long an author waits for an edited page in a preview: the guide is read anew, and the page asked for.</summary>
static class PreviewBenchmark
{
    const int Edits = 15;
    static readonly int[] Sizes = [100, 1_000, 10_000];

    public static async Task Run(TextWriter output)
    {
        await output.WriteLineAsync("| pages | edit to page, ms: middle | most | of it reading and rules, middle |");
        await output.WriteLineAsync("| ---: | ---: | ---: | ---: |");
        foreach (var size in Sizes)
        {
            var folder = Directory.CreateTempSubdirectory();
            try
            {
                CompileBenchmark.WriteGuide(size, folder.FullName);
                await output.WriteLineAsync(await Row(size, folder.FullName));
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        }
    }

    static async Task<string> Row(int size, string folder)
    {
        var path = Path.Combine(folder, "content", "faults", "fault-0-0.md");
        var text = await File.ReadAllTextAsync(path);
        await using var server = PreviewServer.Start(() => new FolderFiles(folder), ThemeFiles.BuiltIn);
        using var client = new HttpClient { BaseAddress = server.Address };
        var page = new Uri("faults/fault-0-0.html", UriKind.Relative);
        var (whole, reading) = (new List<double>(), new List<double>());
        for (var i = 0; i < Edits; i++)
        {
            await File.WriteAllTextAsync(path, text + string.Create(CultureInfo.InvariantCulture, $"\nEdit {i}.\n"));
            var clock = Stopwatch.StartNew();
            server.Refresh();
            reading.Add(clock.Elapsed.TotalMilliseconds);
            var shown = await client.GetStringAsync(page);
            whole.Add(clock.Elapsed.TotalMilliseconds);
            if (!shown.Contains($"Edit {i}.", StringComparison.Ordinal)) throw new InvalidOperationException("the preview shows another page than was written");
        }

        return string.Create(CultureInfo.InvariantCulture, $"| {size} | {Middle(whole):F0} | {whole.Max():F0} | {Middle(reading):F0} |");
    }

    static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
