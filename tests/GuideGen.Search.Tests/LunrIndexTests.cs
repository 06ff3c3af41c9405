using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using GuideGen.Search.Lunr;

namespace GuideGen.Search.Tests;

public sealed class LunrIndexTests
{
    public static TheoryData<int> Sizes => [0, 1, 2, 40, 420];

    [Theory, MemberData(nameof(Sizes))]
    public void The_serialised_index_is_byte_for_byte_what_lunr_writes(int count)
    {
        var documents = SampleTexts.Documents(count);

        Assert.Equal(new LunrOracle().Build(SampleTexts.Fields, documents).Json(), Json(SampleTexts.Fields, documents));
    }

    [Fact]
    public void Every_field_and_boost_weighs_in()
    {
        ImmutableArray<SearchField> fields = [new("text", 0.37), new("title", 1234.5), new("tags", 3)];
        var documents = SampleTexts.Documents(60).Select(d => d with { Texts = d.Texts[1..] }).ToImmutableArray();

        Assert.Equal(new LunrOracle().Build(fields, documents).Json(), Json(fields, documents));
    }

    [Theory, InlineData(1), InlineData(7), InlineData(60)]
    public void Chunks_merge_to_what_one_pass_gives(int documentsPerChunk)
    {
        var documents = SampleTexts.Documents(60);

        Assert.Equal(
            Json(LunrIndexBuilder.Build(SampleTexts.Fields, documents)),
            Json(LunrIndexBuilder.Build(SampleTexts.Fields, documents.Length, i => documents[i], documentsPerChunk)));
    }

    [Fact]
    public void Only_the_documents_around_a_change_are_asked_for_again()
    {
        const int Changed = 60;
        var documents = SampleTexts.Documents(120);
        var kept = new ConcurrentDictionary<int, byte[]>();
        LunrIndexBuilder.Build(SampleTexts.Fields, documents.Length, i => documents[i], (first, _, make) => kept[first] = make());
        documents = documents.SetItem(Changed, SampleTexts.Documents(200)[^1]);
        var asked = new ConcurrentBag<int>();

        var index = LunrIndexBuilder.Build(SampleTexts.Fields, documents.Length, Ask, (first, count, make) =>
            first <= Changed && Changed < first + count ? make() : kept[first]);

        Assert.Equal(Json(SampleTexts.Fields, documents), Json(index));
        Assert.Contains(Changed, asked);
        Assert.True(asked.Count < documents.Length / 2, $"{asked.Count}");

        LunrDocument Ask(int number)
        {
            asked.Add(number);
            return documents[number];
        }
    }

    [Fact]
    public void What_lunr_loads_of_it_ranks_500_queries_as_its_own_index_does()
    {
        var documents = SampleTexts.Documents(150);
        var oracle = new LunrOracle().Build(SampleTexts.Fields, documents).Load("loaded", Json(SampleTexts.Fields, documents));
        var queries = SampleQueries.All(500);

        Assert.Equal(500, queries.Distinct().Count());
        var expected = queries.Select(q => oracle.Search("whole", q)).ToList();
        Assert.All(queries.Zip(expected), q => Assert.Equal(q.Second, oracle.Search("loaded", q.First)));
        Assert.True(expected.Count(e => e.StartsWith("[[", StringComparison.Ordinal)) > 350, "most queries should find something");
    }

    public static TheoryData<string, string[], double> Refused => new()
    {
        { "twice", ["a", "a"], 1 },
        { "boost", ["a"], 0 },
    };

    [Theory, MemberData(nameof(Refused))]
    public void What_lunr_would_take_wrongly_is_refused(string word, string[] refs, double boost)
    {
        var refusal = Assert.Throws<ArgumentException>(() =>
            LunrIndexBuilder.Build([new("text", boost)], [.. refs.Select(r => new LunrDocument(r, ["x"]))]));

        Assert.Contains(word, refusal.Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(0), InlineData(2)]
    public void A_document_without_a_text_for_each_field_is_refused(int texts)
    {
        var refusal = Assert.Throws<ArgumentException>(() =>
            LunrIndexBuilder.Build([new("text", 1)], [new LunrDocument("good", ["x"]), new LunrDocument("odd", [.. Enumerable.Repeat("x", texts)])]));

        Assert.StartsWith("odd has not one text per field.", refusal.Message, StringComparison.Ordinal);
    }

    static string Json(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents) =>
        Json(LunrIndexBuilder.Build(fields, documents));

    static string Json(LunrIndex index)
    {
        using var bytes = new MemoryStream();
        LunrJson.Write(index, bytes);
        return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes.ToArray());
    }
}
