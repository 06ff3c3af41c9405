using System.Collections.Immutable;
using System.Text;
using GuideGen.Search.Lunr;

namespace GuideGen.Search.Shards;

/// <summary>
/// Cuts an index into script files so that a search loads only what its own words need, at any size of guide. In lunr a
/// document's score for a query depends on nothing but its values for the query's terms, so from the shards of those terms
/// the browser (search.js) builds a small index that gives the whole index's results and scores.
/// </summary>
public static class SearchShards
{
    // Measured with the benchmark "search": smaller shards move less for one word and more for a list of starts of words.
    const int TermShardSize = 16 * 1024;
    const int CardsPerFile = 16;

    /// <param name="index">References are the cards' addresses.</param>
    /// <param name="cards">One per document of the index, in its order.</param>
    /// <exception cref="ArgumentException">The cards are not those of the index's documents.</exception>
    public static SearchFiles Cut(LunrIndex index, ImmutableArray<SearchCard> cards) => Cut(index, cards, TermShardSize, CardsPerFile);

    internal static SearchFiles Cut(LunrIndex index, ImmutableArray<SearchCard> cards, int termShardSize, int cardsPerFile)
    {
        if (!cards.Select(c => c.Address).SequenceEqual(index.Refs, StringComparer.Ordinal))
            throw new ArgumentException("The cards are not those of the index's documents, in their order.", nameof(cards));
        var others = Task.Run(() => (CardShards.Cut(cards, cardsPerFile), Words(index)));
        var terms = TermShards.Cut(index, termShardSize);
        var (cardFiles, words) = others.GetAwaiter().GetResult();
        var head = ShardScript.Write("head", json =>
        {
            json.WriteStartObject();
            json.WriteNumber("documents", index.Refs.Length);
            json.WriteNumber("k1", Bm25.K1);
            json.WriteNumber("b", Bm25.B);
            json.Strings("fields", index.Fields.Select(f => f.Name));
            json.WriteStartArray("boosts");
            foreach (var field in index.Fields) json.WriteNumberValue(field.Boost);
            json.WriteEndArray();
            json.Strings("lengths", index.Fields.Select((_, field) => Lengths(index, field)));
            json.WriteString("starts", string.Join(' ', terms.Select(t => t.First)));
            json.WriteString("terms", string.Join(' ', terms.Select(t => t.Shard.Hash)));
            json.WriteString("cards", string.Join(' ', cardFiles.Select(c => c.Hash)));
            json.WriteNumber("cardsPerFile", cardsPerFile);
            json.WriteString("words", words.Hash);
            json.WriteEndObject();
        });
        return new(head.File.Name, [head.File, words.File, .. terms.Select(t => t.Shard.File), .. cardFiles.Select(c => c.File)]);
    }

    /// <summary>All terms, for searches that do not know how a word begins, and beside each the word to show for it, when that is another.</summary>
    static Shard Words(LunrIndex index)
    {
        var terms = index.SortedTerms.Where(t => TermShards.IsFindable(index.Terms[t])).ToList();
        var shortened = terms.Select((t, i) => SharedStart.Shorten(index.Terms[t], i == 0 ? "" : index.Terms[terms[i - 1]]));
        return ShardScript.Write("words", json =>
        {
            json.WriteStartObject();
            json.WriteString("terms", string.Join(' ', shortened));
            json.WriteString("forms", string.Join(' ', terms.Select(t => SharedStart.Change(index.Forms[t], index.Terms[t]))));
            json.WriteEndObject();
        });
    }

    static string Lengths(LunrIndex index, int field)
    {
        var text = new StringBuilder();
        for (var at = field; at < index.Lengths.Length; at += index.Fields.Length) text.AppendNumber(index.Lengths[at]);
        return text.ToString();
    }
}
