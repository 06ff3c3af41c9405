using System.Text;
using System.Text.Json.Nodes;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Tests.Rows;

namespace GuideGen.Guide.Tests.Schemas;

/// <summary>Good and bad samples from two sides: the files of the rows of findings, and every field of the model spoilt in turn.</summary>
static class Samples
{
    static readonly string[] Spoilt = ["{}", "[]", "[[]]", "{ \"?\": \"?\" }", "-1", "1.5", "1e9", "\"?\"", "\"\"", "true", "null", "\"P4299\"", "\"2019-02-30\"", "\"80-\""];

    public static IReadOnlyList<Sample> OfRows { get; } = [.. Written().DistinctBy(s => (s.Kind, s.Yaml))];

    public static IReadOnlyList<Sample> OfModel { get; } = [.. GuideShapes.All.SelectMany(k => OfKind(k.Name, k.Outline))];

    static IEnumerable<Sample> Written()
    {
        var rows = RowFile.All.Select(r => (r.Name, Files: r.Overlay(LineEnding.All[0]))).Append(("base", BaseGuide.Files()));
        return from row in rows
               from file in row.Item2
               where file.Key.EndsWith(".md", StringComparison.Ordinal) || file.Key.EndsWith(".yml", StringComparison.Ordinal)
               let sample = Sample.Of($"{row.Item1} {file.Key}", file.Key, Encoding.UTF8.GetString(file.Value))
               where sample.Json is not null && GuideShapes.All.Any(k => k.Name == sample.Kind)
               select sample;
    }

    static IEnumerable<Sample> OfKind(string kind, Outline outline)
    {
        var whole = Example(outline)!;
        yield return Sample.Of($"{kind}: whole", kind, whole);
        foreach (var place in Places(whole).ToList())
        {
            foreach (var value in Spoilt) yield return Sample.Of($"{kind}: {string.Join('/', place)} = {value}", kind, With(whole, place, JsonNode.Parse(value)));
            yield return Sample.Of($"{kind}: {string.Join('/', place)} left out", kind, Without(whole, place));
            yield return Sample.Of($"{kind}: {string.Join('/', place)} misspelt", kind, Misspelt(whole, place));
        }
    }

    /// <summary>Everything an author may write, with the examples of the model.</summary>
    static JsonNode? Example(Outline outline) => outline switch
    {
        ValueOutline value => JsonNode.Parse(JsonSchemas.Of("x", value))!["examples"]![0]!.DeepClone(),
        ListOutline list => new JsonArray([.. Enumerable.Range(0, Math.Max(1, list.Fewest)).Select(i => Rising(Example(list.Item), i))]),
        MapOutline map => new JsonObject(Enumerable.Range(0, Math.Max(1, map.Fewest)).Select(i => KeyValuePair.Create(Key(map.Key, i), Example(map.Item)))),
        RecordOutline record => new JsonObject(record.Fields.Where(f => !IsAlternative(record, f)).Select(f => KeyValuePair.Create(f.Key, Example(f.Outline)))),
        ChoiceOutline choice => Example(choice.Ways[0]),
        _ => throw new InvalidOperationException("an outline of another kind"),
    };

    /// <summary>Keys that exclude others of the example.</summary>
    static bool IsAlternative(RecordOutline record, IField field) =>
        (Has(record, "low") && field.Key is "over" or "scale")
        || (Has(record, "nodes") && field.Key is "order" or "checks" or "faults" or "questions" or "without" or "ask-variant" or "advice" or "drive");

    static bool Has(RecordOutline record, string key) => record.Fields.Any(f => f.Key == key);

    static JsonNode? Rising(JsonNode? row, int by)
    {
        if (row is JsonArray { Count: 3 } numbers && numbers[0] is JsonValue) numbers[0] = numbers[0]!.GetValue<double>() + by;
        return row;
    }

    static string Key(Outline key, int number) => number == 0 ? Example(key)!.ToString() : $"{Example(key)}-{number}";

    static IEnumerable<string[]> Places(JsonNode? node) => node switch
    {
        JsonObject map => map.SelectMany(e => Places(e.Value).Select(p => (string[])[e.Key, .. p]).Prepend([e.Key])),
        JsonArray list => list.SelectMany((item, i) => Places(item).Select(p => (string[])[$"{i}", .. p])),
        _ => [],
    };

    static JsonNode With(JsonNode whole, string[] place, JsonNode? value) => Change(whole, place, (map, key) => map[key] = value);

    static JsonNode Without(JsonNode whole, string[] place) => Change(whole, place, (map, key) => map.Remove(key));

    static JsonNode Misspelt(JsonNode whole, string[] place) => Change(whole, place, (map, key) =>
    {
        var value = map[key]?.DeepClone();
        map.Remove(key);
        map[key + "?"] = value;
    });

    static JsonNode Change(JsonNode whole, string[] place, Action<JsonObject, string> change)
    {
        var copy = whole.DeepClone();
        var inner = place[..^1].Aggregate(copy, (node, step) => node is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : node[step]!);
        change(inner.AsObject(), place[^1]);
        return copy;
    }
}
