using System.Text.Json;

namespace GuideGen.Browser.Tests;

/// <summary>
/// What lunr's query language (lunrjs.com/guides/searching) allows beyond plain words, asked of the demo guide's index in the browser.
/// That results and scores are those of the whole index is compared in GuideGen.Search.Tests.
/// </summary>
public sealed class QueryLanguageTests(BrowserHouse house)
{
    const int All = 10_000;

    [Theory]
    [InlineData("thermostaat~1")]
    [InlineData("*mostat")]
    [InlineData("ther*stat")]
    [InlineData("thermost*")]
    [InlineData("thermo*~1 thermostat")]
    [InlineData("name:thermostat")]
    [InlineData("+thermostat^3 open")]
    public async Task A_query_finds_the_page_by_part_of_a_word_by_a_misspelt_one_and_by_field(string query)
    {
        await using var visit = await Start();

        Assert.Contains("faults/thermostat-stuck-open.html", Addresses(await Find(visit, query)));
        visit.IsClean();
    }

    [Fact]
    public async Task Wanted_and_unwanted_words_share_the_pages_out()
    {
        await using var visit = await Start();
        var with = Addresses(await Find(visit, "+turbo +hose"));
        var without = Addresses(await Find(visit, "+turbo -hose"));
        var turbo = Addresses(await Find(visit, "turbo"));
        var others = Addresses(await Find(visit, "-turbo"));

        Assert.NotEmpty(with);
        Assert.NotEmpty(without);
        Assert.Equal(turbo.Order(), with.Concat(without).Order());
        Assert.Empty(turbo.Intersect(others));
        Assert.Contains("faults/thermostat-stuck-open.html", others);
        visit.IsClean();
    }

    [Theory]
    [InlineData("turbo~9", "turbo edits, turbo wide", false)]
    [InlineData("c* turbo", "c* wide", true)]
    [InlineData("c* -turbo", "c* wide", false)]
    [InlineData("turbo", "", true)]
    public async Task What_would_cost_too_much_is_limited_and_said(string query, string limits, bool isFound)
    {
        await using var visit = await Start();
        // One file of terms for each word, and the loader that the search has when none is given.
        await visit.Page.EvaluateAsync("() => GuideGen.search.start({ base: GuideGen.base + 'search/', head: GuideGen.data.site.searchHead, lunr: GuideGen.data.site.lunr, most: 1 })");
        var answer = await Find(visit, query);

        Assert.Equal(limits, string.Join(", ", answer.GetProperty("limits").EnumerateArray().Select(l => $"{l.GetProperty("term").GetString()} {l.GetProperty("why").GetString()}")));
        Assert.Equal(isFound, answer.GetProperty("total").GetInt32() > 0);
        visit.IsClean();
    }

    [Fact]
    public async Task A_query_that_cannot_be_read_is_refused_with_the_reason()
    {
        await using var visit = await Start();
        var answer = await Find(visit, "colour:blue");

        Assert.Contains("colour", answer.GetProperty("refused").GetString(), StringComparison.Ordinal);
        Assert.Empty(Addresses(answer));
        visit.IsClean();
    }

    [Fact]
    public async Task A_file_that_is_lost_is_told_and_asked_for_again()
    {
        await using var visit = await Start();
        await visit.Page.EvaluateAsync("() => GuideGen.search.start({ base: GuideGen.base + 'nowhere/', head: 'head.js', lunr: 'lunr.js' })");

        Assert.Contains("could not load", await visit.Page.EvaluateAsync<string>("() => GuideGen.search.find('turbo').catch(fault => fault.message)"), StringComparison.Ordinal);
    }

    async Task<Visit> Start()
    {
        var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open("index.html");
        await visit.Page.EvaluateAsync("() => GuideGen.loadSearch()");
        return visit;
    }

    static async Task<JsonElement> Find(Visit visit, string query) =>
        (await visit.Page.EvaluateAsync<JsonElement?>("([query, count]) => GuideGen.search.find(query, count)", new object[] { query, All }))!.Value;

    static List<string> Addresses(JsonElement answer) => [.. answer.GetProperty("results").EnumerateArray().Select(r => r.GetProperty("address").GetString()!)];
}
