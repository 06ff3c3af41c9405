using System.Text.Json;
using System.Text.Json.Serialization;

namespace GuideGen.Diagnosis;

/// <summary>A row is written and read as all its values.</summary>
public sealed class LikelihoodRowJson : JsonConverter<LikelihoodRow>
{
    public override LikelihoodRow Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var values = new List<double>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) values.Add(reader.GetDouble());
        return [.. values];
    }

    public override void Write(Utf8JsonWriter writer, LikelihoodRow value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        foreach (var likelihood in value.ToArray()) writer.WriteNumberValue(likelihood);
        writer.WriteEndArray();
    }
}
