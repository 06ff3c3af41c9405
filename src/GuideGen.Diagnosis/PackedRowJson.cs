using System.Text.Json;
using System.Text.Json.Serialization;

namespace GuideGen.Diagnosis;

/// <summary>
/// Rows as they are sent to the browser, where <c>ranking.unpack</c> opens them again: the most frequent value followed by pairs of
/// index and value for the rest, <c>[0.05, 3, 0.9]</c>. Of equally frequent values the smallest, so that the same row is always
/// written the same way.
/// </summary>
public sealed class PackedRowJson : JsonConverter<LikelihoodRow>
{
    /// <exception cref="NotSupportedException">Always: only the browser opens packed rows.</exception>
    public override LikelihoodRow Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Packed rows are opened in the browser.");

    public override void Write(Utf8JsonWriter writer, LikelihoodRow value, JsonSerializerOptions options)
    {
        double usual = value.Values().GroupBy(v => v.Value, v => v.Causes)
            .OrderByDescending(v => v.Sum()).ThenBy(v => v.Key).First().Key;
        writer.WriteStartArray();
        writer.WriteNumberValue(usual);
        double[] all = value.ToArray();
        for (int cause = 0; cause < all.Length; cause++)
        {
            if (all[cause] == usual)
                continue;
            writer.WriteNumberValue(cause);
            writer.WriteNumberValue(all[cause]);
        }

        writer.WriteEndArray();
    }
}
