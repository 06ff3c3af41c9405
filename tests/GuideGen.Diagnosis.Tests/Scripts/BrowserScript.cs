using System.Text.Json;
using System.Text.Json.Serialization;
using GuideGen.Testing;
using Jint;

namespace GuideGen.Diagnosis.Tests.Scripts;

/// <summary>One client script in an engine of its own; arguments and results go through JSON, as on a page.</summary>
sealed class BrowserScript : IDisposable
{
    /// <summary>The shape in which models reach the browser: camel case, enums as words.</summary>
    public static JsonSerializerOptions Json { get; } = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    readonly Engine engine = new();

    public BrowserScript(string file) => engine.Execute(Repository.Read("themes", "workshop", "script", file));

    public void Dispose() => engine.Dispose();

    /// <param name="function">Below GuideGen, for example <c>ranking.rank</c>.</param>
    /// <param name="arguments">Each as JSON.</param>
    public T Call<T>(string function, params object?[] arguments)
    {
        string[] texts = [.. arguments.Select(a => JsonSerializer.Serialize(a, Json))];
        string result = engine.Evaluate($"JSON.stringify(GuideGen.{function}({string.Join(", ", texts)}))").AsString();
        return JsonSerializer.Deserialize<T>(result, Json)!;
    }
}
