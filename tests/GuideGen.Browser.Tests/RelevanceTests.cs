using System.Globalization;
using GuideGen.Testing;

namespace GuideGen.Browser.Tests;

/// <summary>The page an owner means is found in one try: the table says which, the browser says what it finds.</summary>
public sealed class RelevanceTests(BrowserHouse house, ITestOutputHelper output)
{
    const double FirstAtLeast = 0.9;

    [Fact]
    public async Task The_page_that_should_win_is_first_nine_times_in_ten_and_always_among_the_first_three()
    {
        var rows = Rows();
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("faults.html");
        await visit.Page.EvaluateAsync("() => GuideGen.loadSearch()");
        var ranks = new List<(string Typed, string Page, int Rank, string Winner)>();
        foreach (var (typed, page) in rows)
        {
            var found = await visit.Page.EvaluateAsync<string[]>("text => GuideGen.searchWords.pages(text, 6).then(all => all.map(f => f.address))", typed);
            ranks.Add((typed, page, Array.IndexOf(found, page) + 1, found.FirstOrDefault("nothing")));
        }

        foreach (var (typed, page, rank, winner) in ranks.Where(r => r.Rank != 1)) output.WriteLine($"{typed}: {page} is {rank}, first is {winner}");
        var first = ranks.Count(r => r.Rank == 1);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"first {first} of {rows.Count}, first three {ranks.Count(r => r.Rank is >= 1 and <= 3)}"));
        Assert.True(rows.Count >= 80);
        Assert.Empty(ranks.Where(r => r.Rank is 0 or > 3).Select(r => $"{r.Typed}: {r.Page} is {r.Rank}, first is {r.Winner}"));
        Assert.True(first >= FirstAtLeast * rows.Count, $"first in {first} of {rows.Count}");
        visit.IsClean();
    }

    static List<(string Typed, string Page)> Rows() =>
    [
        .. Repository.Read("tests", "GuideGen.Browser.Tests", "Relevance", "queries.md").Split('\n')
            .Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(2)
            .Select(l => l.Split('|', StringSplitOptions.TrimEntries))
            .Select(cells => (cells[1], cells[2])),
    ];
}
