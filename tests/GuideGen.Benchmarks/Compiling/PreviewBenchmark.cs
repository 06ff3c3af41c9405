using System.Diagnostics;
using System.Globalization;
using GuideGen.Guide.Loading;
using GuideGen.Site.Preview;
using GuideGen.Site.Rendering;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>How long an author waits for an edited page in a preview, from saving it: the edit is noticed, the guide is read anew, and the page asked for.</summary>
static class PreviewBenchmark
{
    const int Edits = 15;
    static readonly int[] Sizes = [100, 1_000, 10_000];

    public static async Task Run(TextWriter output)
    {
        await output.WriteLineAsync("| pages | text, ms: middle | most | front matter, ms: middle | most |");
        await output.WriteLineAsync("| ---: | ---: | ---: | ---: | ---: |");
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
        using var watcher = new GuideWatcher(folder);
        await using var server = PreviewServer.Start(() => new FolderFiles(folder, TimeProvider.System), ThemeFiles.BuiltIn);
        using var client = new HttpClient { BaseAddress = server.Address };
        var ofText = await Times(edit => text + $"\n{edit}.\n");
        var ofFront = await Times(edit => text.Replace("summary: ", $"summary: {edit}, ", StringComparison.Ordinal));
        return string.Create(CultureInfo.InvariantCulture, $"| {size} | {Middle(ofText):F0} | {ofText.Max():F0} | {Middle(ofFront):F0} | {ofFront.Max():F0} |");

        async Task<List<double>> Times(Func<string, string> edited)
        {
            var times = new List<double>();
            for (var i = 0; i < Edits; i++)
            {
                var edit = string.Create(CultureInfo.InvariantCulture, $"Edit {i}");
                var clock = Stopwatch.StartNew();
                await File.WriteAllTextAsync(path, edited(edit));
                await watcher.Next(CancellationToken.None);
                server.Refresh();
                var shown = await client.GetStringAsync(new Uri("faults/fault-0-0.html", UriKind.Relative));
                times.Add(clock.Elapsed.TotalMilliseconds);
                if (!shown.Contains(edit, StringComparison.Ordinal)) throw new InvalidOperationException("the preview shows another page than was written");
            }

            return times;
        }
    }

    static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
