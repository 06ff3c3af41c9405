using System.Text.Json;
using GuideGen.Codes.Reading;
using GuideGen.Testing;
using Jint;
using Jint.Native;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>The browser's script, run without a browser. Not for several threads at once.</summary>
sealed class Script : IDisposable
{
    // In the order of the pages that load them.
    static readonly string[] Files = ["codes", "codes-line", "codes-trail", "codes-raw", "codes-read", "codes-suggest"];

    readonly Engine engine = new();

    public Script()
    {
        foreach (var file in Files)
            engine.Execute(Repository.Read("themes", "workshop", "script", file + ".js"));
    }

    public void Dispose() => engine.Dispose();

    public ScriptPage Read(string text, ReadingPlace place) =>
        Call<ScriptPage>("(text, place) => GuideGen.codes.readPage(text, place)", text, ScriptPage.Place(place));

    public ScriptSuggestion[] Suggest(string typed, Dictionary<string, CodeStanding> known) =>
        Call<ScriptSuggestion[]>("""
            (typed, known) => GuideGen.codes.suggest(typed, code => JSON.parse(known)[code] || { assigned: false, covered: false, cases: 0 })
            """, typed, ScriptSuggestion.Known(known));

    public string FromBytes(byte high, byte low) => Call<string>("(high, low) => GuideGen.codes.fromBytes(high, low)", (int)high, (int)low);

    public string? Parse(string text) => Call<string?>("text => GuideGen.codes.parse(text)", text);

    T Call<T>(string function, params object[] arguments)
    {
        JsValue[] values = [.. arguments.Select(a => JsValue.FromObject(engine, a))];
        return JsonSerializer.Deserialize<T>(engine.Invoke(engine.Evaluate($"(...a) => JSON.stringify(({function})(...a))"), values).AsString(), ScriptPage.Json)!;
    }
}
