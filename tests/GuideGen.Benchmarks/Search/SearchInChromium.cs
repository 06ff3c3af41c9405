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

    /// <param name="Bytes">What the search loaded, gzip, with the client scripts and lunr.</param>
    /// <param name="Files">How many files that was.</param>
    /// <param name="Milliseconds">From the data in memory to the ten best results with their cards.</param>
    public readonly record struct Search(long Bytes, int Files, double Milliseconds);

    public static async Task<Search[]> First(SearchFiles files, IEnumerable<string> words, string folder)
    {
        var sizes = Write(files, folder);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox"] });
        var searches = new List<Search>();
        foreach (var word in words) searches.Add(await First(browser, word, folder, sizes));
        return [.. searches];
    }

    static async Task<Search> First(IBrowser browser, string word, string folder, Dictionary<string, long> sizes)
    {
        var page = await browser.NewPageAsync();
        var loaded = new ConcurrentBag<string>();
        page.Request += (_, request) => loaded.Add(Path.GetFileName(new Uri(request.Url).LocalPath));
        await page.GotoAsync(new Uri(Path.Combine(folder, "page.html")).AbsoluteUri);
        var found = await page.EvaluateAsync<int>("word => GuideGen.search.find(word).then(a => a.results.length)", word);
        if (found == 0) throw new InvalidOperationException($"{word} is not found, so its time says nothing.");
        var milliseconds = await page.EvaluateAsync<double>("""
            async word => {
              const start = performance.now();
              await GuideGen.search.find(word);
              return performance.now() - start;
            }
            """, word);
        await page.CloseAsync();
        return new(loaded.Sum(name => sizes.GetValueOrDefault(name)), loaded.Count - 1, milliseconds);
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
            <script>GuideGen.search.start({ base: '', head: '{{files.Head}}', lunr: 'lunr.js' });</script>
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
