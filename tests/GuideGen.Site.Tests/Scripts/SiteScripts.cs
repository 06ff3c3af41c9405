using System.Text.Json;
using System.Text.Json.Serialization;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using Jint;

namespace GuideGen.Site.Tests.Scripts;

/// <summary>Client scripts of a compiled site in one engine; arguments and results go through JSON.</summary>
sealed class SiteScripts : IDisposable
{
    static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    readonly Engine engine = new();

    /// <param name="addresses">Of script files as load.js names them, in the order to run them.</param>
    public SiteScripts(CompiledSite site, params string[] addresses)
    {
        engine.Execute("globalThis.self = globalThis; globalThis.GuideGen = {};");
        foreach (var address in addresses) engine.Execute(TextOf(site, address));
    }

    /// <summary>Scripts of the theme have a hash in their address, so they are taken from where they come from.</summary>
    static string TextOf(CompiledSite site, string address) =>
        address.StartsWith("assets/", StringComparison.Ordinal) ? ThemeFiles.BuiltIn.Text("script/" + address["assets/".Length..]) : site.Text(address);

    public void Dispose() => engine.Dispose();

    public void Run(string statement) => engine.Execute(statement);

    /// <param name="function">An expression that is a function.</param>
    public T Call<T>(string function, params object?[] arguments)
    {
        var texts = arguments.Select(a => JsonSerializer.Serialize(a, Json));
        var result = engine.Evaluate($"JSON.stringify(({function})({string.Join(", ", texts)}))").AsString();
        return JsonSerializer.Deserialize<T>(result, Json)!;
    }
}
