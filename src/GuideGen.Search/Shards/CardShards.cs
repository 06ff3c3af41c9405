using System.Collections.Immutable;
using System.Text.Json;

namespace GuideGen.Search.Shards;

/// <summary>The result cards in the documents' order, some to a file: results are scattered, so a file holds few.</summary>
static class CardShards
{
    public static ImmutableArray<Shard> Cut(ImmutableArray<SearchCard> cards, int perFile) =>
    [
        .. cards.Chunk(perFile).Select((some, number) => ShardScript.Write($"cards-{number}", json =>
        {
            json.WriteStartArray();
            foreach (var card in some) Write(json, card);
            json.WriteEndArray();
        })),
    ];

    static void Write(Utf8JsonWriter json, SearchCard card)
    {
        json.WriteStartArray();
        json.WriteStringValue(card.Address);
        json.WriteStringValue(card.Name);
        json.WriteStringValue(card.Kind);
        json.Strings(card.Codes);
        json.WriteStringValue(card.Excerpt);
        json.WriteEndArray();
    }
}
