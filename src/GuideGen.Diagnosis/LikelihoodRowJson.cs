using System.Text.Json;
using System.Text.Json.Serialization;

namespace GuideGen.Diagnosis;

/// <summary>A row is written and read as all its values.</summary>
sealed class LikelihoodRowJson : JsonConverter<LikelihoodRow>
{
    public override LikelihoodRow Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        [.. JsonSerializer.Deserialize<double[]>(ref reader, options)!];

    public override void Write(Utf8JsonWriter writer, LikelihoodRow value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, value.ToArray(), options);
}
