using System.Collections.Immutable;
using GuideGen.Search.Lunr;
using Jint;
using Jint.Native;

namespace GuideGen.Search.Tests;

/// <summary>The real lunr.js, run in the test: source of the expected values is the library itself, version 2.3.9.</summary>
sealed class LunrOracle
{
    public LunrOracle() => Engine.Execute(LunrScript.Text);

    public Engine Engine { get; } = new();

    /// <summary>Builds an index of the documents under the global name <c>whole</c>.</summary>
    public LunrOracle Build(ImmutableArray<SearchField> fields, ImmutableArray<LunrDocument> documents)
    {
        Engine.SetValue("fields", fields.Select(f => new { name = f.Name, boost = f.Boost }).ToArray());
        Engine.SetValue("refs", documents.Select(d => d.Ref).ToArray());
        Engine.SetValue("texts", documents.Select(d => d.Texts.ToArray()).ToArray());
        Engine.Execute("""
            var whole = lunr(function () {
              this.ref('id');
              for (var f = 0; f < fields.length; f++) this.field(fields[f].name, { boost: fields[f].boost });
              for (var d = 0; d < refs.length; d++) {
                var doc = { id: refs[d] };
                for (var f = 0; f < fields.length; f++) doc[fields[f].name] = texts[d][f];
                this.add(doc);
              }
            });
            """);
        return this;
    }

    public LunrOracle Load(string name, string json)
    {
        Engine.SetValue("json", json);
        Engine.Execute($"var {name} = lunr.Index.load(JSON.parse(json));");
        return this;
    }

    public string Json() => Engine.Evaluate("JSON.stringify(whole)").AsString();

    public string Lower(string text) => Call("(function (t) { return t.toLowerCase(); })", text);

    public string Stem(string word) => Call("(function (w) { return lunr.stemmer(new lunr.Token(w)).toString(); })", word);

    public bool IsStopWord(string word) =>
        Engine.Invoke(Engine.Evaluate("(function (w) { return lunr.stopWordFilter(new lunr.Token(w)) === undefined; })"), word).AsBoolean();

    /// <summary>Ranked references with every digit of their scores, or the refusal's text.</summary>
    public string Search(string index, string query)
    {
        Engine.SetValue("query", query);
        return Engine.Evaluate($$"""
            (function () {
              try { return JSON.stringify({{index}}.search(query).map(function (r) { return [r.ref, r.score]; })); }
              catch (refusal) { return 'refused: ' + refusal.message; }
            })()
            """).AsString();
    }

    string Call(string function, string argument) => Engine.Invoke(Engine.Evaluate(function), JsValue.FromObject(Engine, argument)).AsString();
}
