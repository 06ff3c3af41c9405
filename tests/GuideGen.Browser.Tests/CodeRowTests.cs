using System.Text.Json;
using GuideGen.Codes.Tests.Reading;

namespace GuideGen.Browser.Tests;

/// <summary>The rows of reading and of suggesting codes, read by the browser itself: not only by an engine that stands in for it.</summary>
public sealed class CodeRowTests(BrowserHouse house)
{
    [Fact]
    public async Task A_browser_reads_every_row_as_the_build_does()
    {
        var rows = ReadingRow.All.Select(r => ReadingRow.At(r.Data.Item1, r.Data.Item2)).ToList();

        var pages = await Call<ScriptPage>(
            "rows => JSON.stringify(rows.map(([text, place]) => GuideGen.codes.readPage(text, place)))",
            rows.Select(r => new[] { r.Text, ScriptPage.Place(r.ReadingPlace) }));

        Assert.Equal(rows.Count, pages.Length);
        Assert.All(rows.Zip(pages), both =>
        {
            Assert.Equal(both.First.Finds, both.Second.Finds.Select(Printing.Print));
            if (both.First.Answers is { } answers) Assert.Equal(answers, both.Second.Answers.Select(Printing.Print));
        });
    }

    [Fact]
    public async Task A_browser_suggests_what_the_build_does()
    {
        var rows = SuggestionRow.All.Select(r => SuggestionRow.At(r.Data)).ToList();

        var suggested = await Call<ScriptSuggestion[]>(
            "rows => JSON.stringify(rows.map(([typed, known]) => GuideGen.codes.suggest(typed, code => JSON.parse(known)[code] || { assigned: false, covered: false, cases: 0 })))",
            rows.Select(r => new[] { r.Typed, ScriptSuggestion.Known(r.Known()) }));

        Assert.Equal(rows.Select(r => r.Want), suggested.Select(all => all.Select(s => s.Print()).ToArray()));
    }

    async Task<T[]> Call<T>(string function, IEnumerable<string[]> rows)
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open("index.html");
        await visit.Page.EvaluateAsync("() => GuideGen.loadCodes()");
        return JsonSerializer.Deserialize<T[]>(await visit.Page.EvaluateAsync<string>(function, rows.ToArray()), ScriptPage.Json)!;
    }
}
