using System.Text.Encodings.Web;
using System.Text.Json;

namespace GuideGen.Search.Shards;

/// <summary>Data as a script that a page loads with a script element: the only way that also works from a file.</summary>
static class ShardScript
{
    // Only what a script string needs: these files are never pasted into a page.
    static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static Shard Write(string key, Action<Utf8JsonWriter> data)
    {
        using var script = new MemoryStream();
        script.Write("GuideGen.search.take(\""u8);
        script.Write(System.Text.Encoding.UTF8.GetBytes(key));
        script.Write("\","u8);
        using (var json = new Utf8JsonWriter(script, Options)) data(json);
        script.Write(");\n"u8);
        return new Shard(key, script.ToArray());
    }

    public static void Strings(this Utf8JsonWriter json, IEnumerable<string> values)
    {
        json.WriteStartArray();
        foreach (var value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }

    public static void Strings(this Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WritePropertyName(name);
        json.Strings(values);
    }
}
