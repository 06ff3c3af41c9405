using System.Collections.Concurrent;
using System.IO.Compression;
using GuideGen.Search;
using GuideGen.Search.Shards;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Benchmarks.Search;

/// <summary>One-word searches from a file, each as the first one of a page that has loaded nothing yet.</summary>
static class SearchInChromium
{
    static readonly string[] Scripts = ["search-index.js", "search-best.js", "search.js", "search-words.js"];

    const int Times = 3;

    /// <param name="Bytes">What the search loaded, gzip, with the client scripts and lunr.</param>
    /// <param name="Files">How many files that was.</param>
    /// <param name="Cold">Milliseconds of a page's first search: files read, scripts compiled.</param>
    /// <param name="Clock">
    /// Milliseconds from the data in memory, all of it unread, to the ten best results with their cards: middle of three fresh pages,
    /// in each the first time after the cold one.
    /// </param>
    /// <param name="Processor">The same as the main thread's own time, with what the question from outside costs.</param>
    public readonly record struct Search(long Bytes, int Files, double Cold, double Clock, double Processor);

    public static async Task<Search[]> First(SearchFiles files, IEnumerable<string> words, string folder)
    {
        var sizes = Write(files, folder);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox"] });
        var searches = new List<Search>();
        foreach (var word in words)
        {
            var some = new List<Search>();
            for (var i = 0; i < Times; i++) some.Add(await First(browser, word, folder, sizes));
            searches.Add(some[0] with { Cold = Middle(some.Select(s => s.Cold)), Clock = Middle(some.Select(s => s.Clock)), Processor = Middle(some.Select(s => s.Processor)) });
        }

        return [.. searches];
    }

    static double Middle(IEnumerable<double> values) => values.Order().ElementAt(Times / 2);

    static async Task<Search> First(IBrowser browser, string word, string folder, Dictionary<string, long> sizes)
    {
        var page = await browser.NewPageAsync();
        var loaded = new ConcurrentBag<string>();
        page.Request += (_, request) => loaded.Add(Path.GetFileName(new Uri(request.Url).LocalPath));
        var devTools = await page.Context.NewCDPSessionAsync(page);
        await devTools.SendAsync("Performance.enable", new() { ["timeDomain"] = "threadTicks" });
        await page.GotoAsync(new Uri(Path.Combine(folder, "page.html")).AbsoluteUri);
        var cold = await page.EvaluateAsync<double>("word => timed(word)", word);
        if (cold < 0) throw new InvalidOperationException($"{word} is not found, so its time says nothing.");
        var before = await ThreadTime(devTools);
        var clock = await page.EvaluateAsync<double>("word => { forget(); return timed(word); }", word);
        var after = await ThreadTime(devTools);
        await page.CloseAsync();
        return new(loaded.Sum(name => sizes.GetValueOrDefault(name)), loaded.Count - 1, cold, clock, after - before);
    }

    /// <summary>Milliseconds that the page's main thread has worked.</summary>
    static async Task<double> ThreadTime(ICDPSession devTools)
    {
        var metrics = (await devTools.SendAsync("Performance.getMetrics"))!.Value.GetProperty("metrics");
        return metrics.EnumerateArray().Single(m => m.GetProperty("name").GetString() == "TaskDuration").GetProperty("value").GetDouble() * 1000;
    }

    /// <returns>Compressed size of each file by name.</returns>
    static Dictionary<string, long> Write(SearchFiles files, string folder)
    {
        var all = files.Files.ToDictionary(f => f.Name, f => f.Script.ToArray());
        all["lunr.js"] = System.Text.Encoding.UTF8.GetBytes(LunrScript.Text);
        foreach (var script in Scripts) all[script] = File.ReadAllBytes(Repository.PathTo("themes", "workshop", "script", script));
        foreach (var (name, bytes) in all) File.WriteAllBytes(Path.Combine(folder, name), bytes);
        File.WriteAllText(Path.Combine(folder, "page.html"), $$"""
            <!DOCTYPE html><meta charset="utf-8"><title>Search</title>
            {{string.Concat(Scripts.Select(s => $"<script src=\"{s}\"></script>"))}}
            <script>
              const place = { base: '', head: '{{files.Head}}', lunr: 'lunr.js' }, came = [], take = GuideGen.search.take;
              GuideGen.search.take = (key, data) => { came.push([key, data]); take(key, data); };
              GuideGen.search.start(place);
              /** All data is as it was when it had just arrived. */
              function forget() {
                GuideGen.search.start({ ...place, load: () => Promise.resolve() });
                came.forEach(([key, data]) => take(key, data));
              }
              async function timed(word) {
                const start = performance.now();
                const answer = await GuideGen.search.find(word);
                return answer.total > 0 ? performance.now() - start : -1;
              }
            </script>
            """);
        return all.ToDictionary(f => f.Key, f => Compressed(f.Value));
    }

    static long Compressed(byte[] bytes)
    {
        using var compressed = new MemoryStream();
        using (var gzip = new GZipStream(compressed, CompressionLevel.Optimal, leaveOpen: true)) gzip.Write(bytes);
        return compressed.Length;
    }
}
