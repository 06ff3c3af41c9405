using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace GuideGen.Guide.Shapes;

/// <summary>JSON Schemas (2020-12) of outlines, for editors that complete and check as one writes.</summary>
/// <remarks>
/// A schema allows whatever the loader reads, and refuses what it refuses, but for what a schema cannot say: that the
/// first number of a range is not above the second, and that the rows of a table rise. A number or a flag in quotes is refused.
/// </remarks>
public static class JsonSchemas
{
    static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        // For files that editors read, never inside HTML.
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="name">What the files are, such as fault.</param>
    public static string Of(string name, Outline outline)
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = name,
        };
        foreach (var (key, value) in Of(outline)) schema[key] = value?.DeepClone();
        return schema.ToJsonString(Options) + "\n";
    }

    static JsonObject Of(Outline outline) => outline switch
    {
        ValueOutline value => Value(value),
        ListOutline list => new() { ["type"] = "array", ["items"] = Of(list.Item), ["minItems"] = list.Fewest },
        MapOutline map => new() { ["type"] = "object", ["propertyNames"] = Key(map.Key), ["additionalProperties"] = Of(map.Item), ["minProperties"] = map.Fewest },
        RecordOutline record => Record(record),
        ChoiceOutline choice => new() { ["oneOf"] = new JsonArray([.. choice.Ways.Select(Of)]) },
        _ => throw new InvalidOperationException("an outline of another kind"),
    };

    static JsonObject Value(ValueOutline value)
    {
        var schema = JsonNode.Parse(value.Constraint)!.AsObject();
        schema["examples"] = new JsonArray(Example(value.Example));
        return schema;
    }

    /// <summary>In JSON every key is text, and so an example of a key.</summary>
    static JsonObject Key(Outline key)
    {
        var schema = Of(key);
        schema.Remove("examples");
        return schema;
    }

    static JsonObject Record(RecordOutline record)
    {
        var properties = new JsonObject();
        foreach (var field in record.Fields) properties[field.Key] = Described(field);
        var schema = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. record.Fields.Where(f => f.IsRequired).Select(f => (JsonNode)f.Key)]),
            ["additionalProperties"] = false,
        };
        if (record.Conditions.Length > 0) schema["allOf"] = JsonNode.Parse(record.Conditions);
        return schema;
    }

    static JsonObject Described(IField field)
    {
        var schema = new JsonObject { ["description"] = $"{field.Help} Write {field.Expected}." };
        foreach (var (key, value) in Of(field.Outline)) schema[key] = value?.DeepClone();
        return schema;
    }

    static JsonNode Example(string text)
    {
        if (text.StartsWith('[') || text is "true" or "false") return JsonNode.Parse(text)!;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? JsonValue.Create(number) : JsonValue.Create(text);
    }
}
