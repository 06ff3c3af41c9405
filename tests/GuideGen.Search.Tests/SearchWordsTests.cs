using System.Collections.Immutable;
using System.Text.Json;
using GuideGen.Search.Shards;

namespace GuideGen.Search.Tests;

public sealed class SearchWordsTests
{
    static readonly ImmutableArray<SearchDocument> Pages =
    [
        new("faults/a.html", "Weak battery", ["P0562"], "Batteries that do not hold their charge.", "Measure the batteries at rest, then cranking."),
        new("faults/b.html", "Worn brake pads", ["C0035"], "Braking takes longer; the pads squeal.", "Look at both brakes. The coolant is no part of it."),
    ];

    readonly ShardSearch _search = new(SearchShards.Cut(
        SearchDocument.Index(Pages), [.. Pages.Select(p => new SearchCard(p.Address, p.Name, "fault", p.Codes, p.Summary))]));

    [Theory]
    [InlineData("  Brake-pads, (worn)?", false, """[{"term":"brake"},{"term":"pads"},{"term":"worn"}]""")]
    [InlineData("+brake -pads name:x* ~2", false, """[{"term":"brake"},{"term":"pads"},{"term":"name:x"},{"term":"2"}]""")]
    [InlineData("worn bra", true, """[{"term":"worn"},{"term":"bra","boost":10},{"term":"bra*","usePipeline":false}]""")]
    [InlineData("worn brake ", true, """[{"term":"worn"},{"term":"brake"}]""")]
    [InlineData(" ? ", true, "[]")]
    public void Loose_text_becomes_clauses_without_operators(string text, bool typing, string clauses)
    {
        _search.Engine.SetValue("text", text);
        _search.Engine.SetValue("typing", typing);

        Assert.Equal(clauses, _search.Text("JSON.stringify(GuideGen.searchWords.plain(text, typing))"));
    }

    [Theory]
    [InlineData("battery", "faults/a.html"), InlineData("batteries?", "faults/a.html"), InlineData("p0562", "faults/a.html")]
    [InlineData("squ", "faults/b.html"), InlineData("the brake", "faults/b.html"), InlineData("C0035 ", "faults/b.html")]
    public void Clauses_find_pages(string text, string address)
    {
        _search.Engine.SetValue("text", text);

        Assert.Equal(address, _search.Run("GuideGen.search.find(GuideGen.searchWords.plain(text, true)).then(function (a) { return a.results[0].address; })"));
    }

    [Theory]
    [InlineData("batery", "battery"), InlineData("coolent", "coolant"), InlineData("barke", "brake"), InlineData("xxxxxxxx", ""), InlineData("a", "")]
    public void A_mistyped_word_gets_the_nearest_words_of_the_guide(string word, string nearest)
    {
        _search.Engine.SetValue("word", word);

        Assert.Equal(nearest, _search.Run("GuideGen.searchWords.nearest(word).then(function (n) { return n.join(' '); })"));
    }

    [Theory]
    [InlineData("Worn brake-pads (brakes, braking).", "brake", "Worn |brake|-pads (|brakes|, |braking|).")]
    [InlineData("No such word.", "brake", "No such word.")]
    [InlineData("brake", "brake", "|brake|")]
    [InlineData("Brake's end, “pads”", "pad", "Brake's end, “|pads|”")]
    public void The_words_of_an_excerpt_that_matched_stand_on_their_own(string text, string term, string pieces)
    {
        _search.Run("GuideGen.search.find('brake').then(function () { return ''; })");
        _search.Engine.SetValue("text", text);
        _search.Engine.SetValue("term", term);

        var found = JsonSerializer.Deserialize<string[]>(_search.Text("JSON.stringify(GuideGen.searchWords.pieces(text, [term]))"))!;
        Assert.Equal(pieces, string.Join('|', found));
        Assert.Equal(1, found.Length % 2);
    }
}
