using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Search;
using GuideGen.Search.Lunr;
using GuideGen.Search.Shards;

namespace GuideGen.Benchmarks.Search;

/// <summary>What the search costs to build, to move and to run, for guides of 100, 1,000 and 10,000 pages of 700 words.</summary>
static class SearchBenchmark
{
    static readonly int[] Sizes = [100, 1_000, 10_000];

    public static async Task Run(TextWriter output)
    {
        await output.WriteLineAsync("""
            | pages | index in C#, s: clock, processor | in lunr.js, s: clock, processor | times faster: clock, processor | same bytes | whole index, MB | shard files | shards and lunr, of the Markdown |
            | --: | --: | --: | --: | :-- | --: | --: | --: |
            """);
        Index(new PageGenerator(2).Pages(200));
        foreach (var size in Sizes) await output.WriteLineAsync(await InFolder(size, IndexRow));
        await output.WriteLineAsync();
        await RunBrowser(output);
    }

    /// <summary>Only what the browser does.</summary>
    public static async Task RunBrowser(TextWriter output)
    {
        await output.WriteLineAsync("""
            | pages | first word, KB gzip: median, most | files | a page's first search with its files from disk, ms: median, most | data to results in Chromium, ms: median, most | the same, of the main thread's time |
            | --: | --: | --: | --: | --: | --: |
            """);
        foreach (var size in Sizes) await output.WriteLineAsync(await InFolder(size, BrowserRow));
    }

    static async Task<string> InFolder(int size, Func<ImmutableArray<SearchDocument>, string, Task<string>> row)
    {
        var folder = Directory.CreateTempSubdirectory("guidegen-search-").FullName;
        try
        {
            return await row(new PageGenerator(1).Pages(size), folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    static Task<string> IndexRow(ImmutableArray<SearchDocument> pages, string folder)
    {
        var ((index, json), ours) = Effort.Of(() => Index(pages));
        var (lunrJson, lunr) = LunrInNode.Build(pages, folder);
        var files = SearchShards.Cut(index, Cards(pages));
        var written = files.Files.Sum(f => (double)f.Script.Length) + LunrScript.Text.Length;
        return Task.FromResult(string.Create(CultureInfo.InvariantCulture,
            $"| {pages.Length:N0} | {ours.Clock:F2}, {ours.Processor:F2} | {lunr.Clock:F2}, {lunr.Processor:F2} " +
            $"| {lunr.Clock / ours.Clock:F1}, {lunr.Processor / ours.Processor:F1} | {(json.Span.SequenceEqual(lunrJson) ? "yes" : "NO")} " +
            $"| {json.Length / 1e6:F1} | {files.Files.Length:N0} | {written / pages.Sum(PageGenerator.MarkdownBytes):F2} |"));
    }

    static async Task<string> BrowserRow(ImmutableArray<SearchDocument> pages, string folder)
    {
        var index = SearchDocument.Index(pages);
        var searches = await SearchInChromium.First(SearchShards.Cut(index, Cards(pages)), Words(index), folder);
        return string.Create(CultureInfo.InvariantCulture,
            $"| {pages.Length:N0} | {Spread(searches, s => s.Bytes / 1024.0)} | {searches.Max(s => s.Files)} " +
            $"| {Spread(searches, s => s.Cold)} | {Spread(searches, s => s.Clock)} | {Spread(searches, s => s.Processor)} |");
    }

    static (LunrIndex Index, ReadOnlyMemory<byte> Json) Index(ImmutableArray<SearchDocument> pages)
    {
        var index = SearchDocument.Index(pages);
        using var json = new MemoryStream(pages.Length * 20_000);
        LunrJson.Write(index, json);
        return (index, json.GetBuffer().AsMemory(0, (int)json.Length));
    }

    static ImmutableArray<SearchCard> Cards(ImmutableArray<SearchDocument> pages) =>
        [.. pages.Select(p => new SearchCard(p.Address, p.Name, "fault", p.Codes, string.Join(' ', p.Summary.Split(' ').Take(25))))];

    /// <summary>Words from the commonest to one that a single page has: their ranks double each time.</summary>
    static IEnumerable<string> Words(LunrIndex index)
    {
        var byPages = Enumerable.Range(0, index.Terms.Length)
            .Where(t => index.Terms[t].Length > 2)
            .OrderByDescending(t => index.ByTerm.Starts[(t + 1) * index.Fields.Length] - index.ByTerm.Starts[t * index.Fields.Length])
            .ToList();
        for (var rank = 1; rank < byPages.Count; rank *= 2) yield return index.Forms[byPages[rank - 1]];
    }

    static string Spread(SearchInChromium.Search[] searches, Func<SearchInChromium.Search, double> value)
    {
        var sorted = searches.Select(value).Order().ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{sorted[sorted.Count / 2]:F1}, {sorted[^1]:F1}");
    }
}
