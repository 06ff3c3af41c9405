using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Search;

namespace GuideGen.Benchmarks.Search;

/// <summary>
/// Pages of about 700 words, to which every page adds a few of its own (part numbers, codes). The same seed gives the same
/// pages.
/// </summary>
sealed class PageGenerator(int seed)
{
    readonly RandomText text = new(seed);

    public ImmutableArray<SearchDocument> Pages(int count) => [.. Enumerable.Range(0, count).Select(Page)];

    /// <summary>How large the page's Markdown source is at the least: its texts, no front matter or markup counted.</summary>
    public static int MarkdownBytes(SearchDocument page) =>
        page.Name.Length + string.Join(' ', page.Codes).Length + page.Summary.Length + page.Body.Length;

    SearchDocument Page(int number)
    {
        var name = RandomText.Capital(text.Words(3 + text.Chance.Next(4)));
        var codes = Enumerable.Range(0, text.Chance.Next(4)).Select(_ => text.Code()).ToImmutableArray();
        var summary = text.Sentences(40);
        var body = text.Sentences(640 + text.Chance.Next(40)) + $" Part {text.Chance.Next(100_000, 999_999)} or {text.Code()}.";
        var address = string.Create(CultureInfo.InvariantCulture, $"faults/{string.Join('-', name.ToLowerInvariant().Split(' ').Take(3))}-{number}.html");
        return new(address, name, codes, summary, body);
    }
}
