using System.Text.Json;
using System.Text.Json.Nodes;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;
using Json.Schema;

namespace GuideGen.Guide.Tests.Schemas;

/// <summary>What an editor says by the schema and what the loader says are the same.</summary>
public sealed class SchemaTests
{
    /// <summary>What a schema cannot say, as it stands in the remarks of <see cref="JsonSchemas"/>.</summary>
    static readonly string[] Beyond = ["stands twice", "rising x", "a price such as", "years such as", "has a low above its high"];

    static readonly Dictionary<string, JsonSchema> Schemas = GuideShapes.All.ToDictionary(k => k.Name, k => JsonSchema.FromText(JsonSchemas.Of(k.Name, k.Outline)));

    public static TheoryData<string> Kinds => new(GuideShapes.All.Select(k => k.Name));

    [Fact]
    public void Schema_and_loader_agree_on_the_files_of_every_row_of_findings() => AssertAgreement(Samples.OfRows, good: 100, bad: 60);

    [Fact]
    public void Schema_and_loader_agree_when_every_field_of_the_model_is_spoilt_in_turn() => AssertAgreement(Samples.OfModel, good: 200, bad: 1000);

    /// <summary>The meta-schema is published at json-schema.org/draft/2020-12/schema; JsonSchema.Net carries it.</summary>
    [Theory, MemberData(nameof(Kinds))]
    public void A_schema_is_a_schema(string kind)
    {
        using var schema = JsonDocument.Parse(JsonSchemas.Of(kind, GuideShapes.All.Single(k => k.Name == kind).Outline));

        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Every_key_has_a_description_and_every_value_an_example(string kind)
    {
        var schema = JsonNode.Parse(JsonSchemas.Of(kind, GuideShapes.All.Single(k => k.Name == kind).Outline))!;

        Assert.All(Properties(schema), p => Assert.NotEmpty((string)p["description"]!));
        Assert.All(Properties(schema).Where(p => p["enum"] is not null || p["type"]?.ToString() is "string" or "number"), p => Assert.NotEmpty(p["examples"]!.AsArray()));
    }

    static IEnumerable<JsonNode> Properties(JsonNode? node) => node switch
    {
        JsonObject map => map.SelectMany(e => e.Key == "properties" && map["type"] is not null ? e.Value!.AsObject().Select(p => p.Value!).SelectMany(p => Properties(p).Prepend(p)) : Properties(e.Value)),
        JsonArray list => list.SelectMany(Properties),
        _ => [],
    };

    static void AssertAgreement(IReadOnlyList<Sample> samples, int good, int bad)
    {
        var judged = samples.Select(s => (Sample: s, Loader: s.Objections(), IsValid: IsValid(s))).ToList();
        var comparable = judged.Where(j => !j.Loader.Any(f => Beyond.Any(b => f.Message.Contains(b, StringComparison.Ordinal)))).ToList();

        var disagreed = comparable.Where(j => j.IsValid != j.Loader.IsEmpty).Select(j => $"{j.Sample}: schema {(j.IsValid ? "takes" : "refuses")} {j.Sample.Json!.ToJsonString()}, loader: {string.Join("; ", j.Loader.Select(f => f.Message))}");

        Assert.True(!disagreed.Any(), string.Join('\n', disagreed));
        Assert.InRange(comparable.Count(j => j.IsValid), good, int.MaxValue);
        Assert.InRange(comparable.Count(j => !j.IsValid), bad, int.MaxValue);
    }

    static bool IsValid(Sample sample)
    {
        using var json = JsonDocument.Parse(sample.Json!.ToJsonString());
        return Schemas[sample.Kind].Evaluate(json.RootElement, new EvaluationOptions { RequireFormatValidation = true }).IsValid;
    }
}
