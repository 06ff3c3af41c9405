using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using GuideGen.Search.Lunr;
using GuideGen.Search.Shards;

namespace GuideGen.Search.Tests;

public sealed class SearchShardsTests
{
    static readonly ImmutableArray<LunrDocument> Documents =
        [.. SampleTexts.Documents(120).Select((d, i) => d with { Ref = $"faults/page-{i}.html" })];

    static SearchFiles Files(ImmutableArray<LunrDocument> documents, int termShardSize = 300, int cardsPerFile = 8) =>
        SearchShards.Cut(LunrIndexBuilder.Build(SampleTexts.Fields, documents), ShardSearch.CardsOf(documents), termShardSize, cardsPerFile);

    [Fact]
    public void Shards_give_the_whole_index_s_results_and_scores_for_500_queries() =>
        Compare(SampleQueries.Distinct(SampleQueries.Exact, 500), leastFound: 375);

    [Fact]
    public void Fuzzy_words_and_stars_in_front_find_their_neighbours_too() =>
        Compare(SampleQueries.Distinct(SampleQueries.Loose, 96), leastFound: 50);

    static void Compare(ImmutableArray<string> queries, int leastFound)
    {
        var whole = new LunrOracle().Build(SampleTexts.Fields, Documents);
        var shards = new ShardSearch(Files(Documents));
        var expected = queries.Select(q => whole.Search("whole", q)).ToList();

        Assert.All(queries.Zip(expected), q => Assert.Equal(q.Second, shards.Search(q.First)));
        Assert.All(queries.Zip(expected), q => Assert.Equal(First(q.Second, 3), shards.First(q.First, 3)));
        Assert.InRange(expected.Count(e => e.StartsWith("[[", StringComparison.Ordinal)), leastFound, queries.Length);
        Assert.True(shards.Loaded.Distinct().Count(f => f.StartsWith("terms-", StringComparison.Ordinal)) > 30, "the index should be cut into many files");
    }

    static string First(string results, int count)
    {
        if (!results.StartsWith('[')) return results;
        var all = JsonDocument.Parse(results).RootElement.EnumerateArray().Select(r => r.GetRawText()).ToList();
        return $"{all.Count} [{string.Join(',', all.Take(count))}]";
    }

    [Fact]
    public void Nothing_is_loaded_before_the_first_search_and_then_only_what_it_needs()
    {
        var shards = new ShardSearch(Files(Documents));
        Assert.Empty(shards.Loaded);

        shards.Engine.SetValue("query", "coolant");
        shards.Run("GuideGen.search.find(query, 3).then(function (a) { return a.results[0].address; })");

        Assert.Equal(["head", "lunr", "terms"], shards.Loaded.Take(3).Select(Kind).Order());
        Assert.InRange(shards.Loaded.Count(f => Kind(f) == "cards"), 1, 3);
        Assert.Equal(shards.Loaded.Count, shards.Loaded.Distinct().Count());
        var before = shards.Loaded.Count;
        shards.Run("GuideGen.search.find(query, 3).then(function (a) { return a.results[0].address; })");
        Assert.Equal(before, shards.Loaded.Count);
    }

    [Fact]
    public void A_result_carries_its_card()
    {
        var shards = new ShardSearch(Files(Documents));

        var answer = shards.Run("GuideGen.search.find('coolant', 1).then(function (a) { return JSON.stringify(a); })");

        var root = JsonDocument.Parse(answer).RootElement;
        var first = root.GetProperty("results")[0];
        var number = first.GetProperty("document").GetInt32();
        var card = ShardSearch.CardsOf(Documents)[number];
        Assert.True(root.GetProperty("total").GetInt32() > 1);
        Assert.Equal(1, root.GetProperty("results").GetArrayLength());
        Assert.Equal((card.Address, card.Name, card.Kind, card.Excerpt, card.Codes[0]), (
            first.GetProperty("address").GetString(), first.GetProperty("name").GetString(), first.GetProperty("kind").GetString(),
            first.GetProperty("excerpt").GetString(), first.GetProperty("codes")[0].GetString()));
        Assert.Equal("[\"coolant\"]", first.GetProperty("terms").GetRawText());
    }

    // Left out, so that what remains finds what it finds alone; a prohibition alone would find all other pages.
    [Theory]
    [InlineData("*", "*", "")]
    [InlineData("b* coolant", "b*", "coolant")]
    [InlineData("+b* coolant brake", "b*", "coolant brake")]
    [InlineData("b* -coolant", "b*", "")]
    public void A_word_that_would_load_too_much_is_left_out_and_named(string query, string wide, string rest)
    {
        var shards = new ShardSearch(Files(Documents), most: 5);
        shards.Engine.SetValue("wide", query);
        shards.Engine.SetValue("rest", rest);
        string Find(string text) => shards.Run($"GuideGen.search.find({text}).then(function (a) {{ return JSON.stringify([a.total, a.results]); }})");

        Assert.Equal($$"""limits: [{"term":"{{wide}}","why":"wide"}]""", shards.Search(query));
        Assert.Equal(Find("rest"), Find("wide"));
    }

    [Fact]
    public void A_search_for_nothing_finds_nothing() => Assert.Equal("[]", new ShardSearch(Files(Documents)).Search(" "));

    [Fact]
    public void More_than_two_edits_are_searched_as_two_and_named()
    {
        var shards = new ShardSearch(Files(Documents));

        Assert.Equal("""limits: [{"term":"coolent","why":"edits"}]""", shards.Search("coolent~4"));
        const string find = "GuideGen.search.find('coolent~' + edits, 1000).then(function (a) { return JSON.stringify(a.results); })";
        shards.Engine.SetValue("edits", 2);
        var two = shards.Run(find);
        shards.Engine.SetValue("edits", 4);
        Assert.Contains("coolant", two, StringComparison.Ordinal);
        Assert.Equal(two, shards.Run(find));
    }

    [Fact]
    public void A_file_that_failed_is_asked_for_again()
    {
        var files = Files(Documents);
        var shards = new ShardSearch(files);
        shards.Missing.Add(files.Head);
        const string find = "GuideGen.search.find('coolant').then(function (a) { return 'found'; }, function (e) { return e.message; })";

        Assert.Equal("could not load search/" + files.Head, shards.Run(find));
        shards.Missing.Clear();
        Assert.Equal("found", shards.Run(find));
    }

    [Fact]
    public void A_file_s_name_ends_in_the_start_of_its_SHA_256()
    {
        Assert.All(Files(Documents).Files, f => Assert.EndsWith(
            $"-{Convert.ToHexStringLower(SHA256.HashData(f.Script.Span))[..8]}.js", f.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_pages_give_the_same_files_and_another_page_other_names()
    {
        var (first, again) = (Files(Documents), Files(Documents));
        var changed = Files(Documents.SetItem(7, Documents[7] with { Texts = ["new words", "", "", ""] }));

        Assert.Equal(first.Files.Select(f => f.Name), again.Files.Select(f => f.Name));
        Assert.Equal(first.Files.Length, first.Files.Select(f => f.Name).Distinct().Count());
        Assert.NotEqual(first.Head, changed.Head);
    }

    [Fact]
    public void The_list_of_words_has_every_findable_term_and_the_word_to_show_for_it()
    {
        var index = LunrIndexBuilder.Build(SampleTexts.Fields, Documents);
        var expected = index.Terms.Zip(index.Forms).Where(t => TermShards.IsFindable(t.First)).OrderBy(t => t.First, StringComparer.Ordinal).ToList();

        var words = new ShardSearch(Files(Documents)).Run("GuideGen.search.vocabulary().then(function (v) { return JSON.stringify([v.terms, v.forms]); })");

        Assert.Equal<string[]>([[.. expected.Select(e => e.First)], [.. expected.Select(e => e.Second)]], JsonSerializer.Deserialize<string[][]>(words)!);
        Assert.Contains("", index.Terms);
    }

    [Theory, InlineData(0), InlineData(1)]
    public void A_guide_of_hardly_any_pages_is_searched_without_fault(int count)
    {
        var shards = new ShardSearch(Files(Documents[..count]));

        Assert.Equal("[]", shards.Search("nothingofthekind"));
        Assert.Equal("[]", shards.Search("no*"));
    }

    [Fact]
    public void Cards_of_other_pages_are_refused() => Assert.Throws<ArgumentException>(() =>
        SearchShards.Cut(LunrIndexBuilder.Build(SampleTexts.Fields, Documents), ShardSearch.CardsOf(Documents[1..])));

    [Fact]
    public void Numbers_are_read_as_they_were_written()
    {
        int[] values = [.. Enumerable.Range(0, 2_200), 91_124, 91_125, 1_000_000, int.MaxValue];
        var text = values.Aggregate(new StringBuilder(), (t, v) => t.AppendNumber(v)).ToString();
        var shards = new ShardSearch(Files(Documents[..1]));
        shards.Engine.SetValue("text", text);

        Assert.Equal(JsonSerializer.Serialize(values), shards.Text("JSON.stringify(Array.from(GuideGen.searchIndex.numbers(text)))"));
        Assert.DoesNotContain(text, c => c is '"' or '\\' or ' ' or < '!' or > '~');
    }

    static string Kind(string file) => file.Split('-', '.')[0];
}
