using System.Collections.Immutable;
using System.Text;
using GuideGen.Search.Lunr;
using GuideGen.Search.Shards;
using GuideGen.Testing;
using Jint;

namespace GuideGen.Search.Tests;

/// <summary>The client scripts over cut files, with a loader that runs them from memory and writes down what it ran.</summary>
sealed class ShardSearch
{
    static readonly string[] Scripts = ["search-index.js", "search-best.js", "search.js", "search-words.js"];

    readonly Dictionary<string, string> _files;

    public ShardSearch(SearchFiles files, int most = 1_000)
    {
        _files = files.Files.ToDictionary(f => f.Name, f => Encoding.UTF8.GetString(f.Script.Span));
        _files["lunr.js"] = LunrScript.Text;
        foreach (var script in Scripts) Engine.Execute(Repository.Read("themes", "workshop", "script", script));
        Engine.SetValue("read", new Func<string, string?>(Read));
        Engine.SetValue("head", files.Head);
        Engine.SetValue("most", most);
        Engine.Execute("""
            GuideGen.search.start({
              base: 'search/', head: head, lunr: 'lunr.js', most: most,
              load: function (address) {
                const text = read(address);
                if (text === null) return Promise.reject(new Error('could not load ' + address));
                (0, eval)(text);
                return Promise.resolve();
              }
            });
            """);
    }

    public Engine Engine { get; } = new();

    /// <summary>Names of the files that were asked for, in order.</summary>
    public List<string> Loaded { get; } = [];

    public HashSet<string> Missing { get; } = [];

    public static ImmutableArray<SearchCard> CardsOf(ImmutableArray<LunrDocument> documents) =>
        [.. documents.Select((d, i) => new SearchCard(d.Ref, $"Page {i} “quoted\"", "fault", [$"P{i:D4}"], $"Excerpt of {i}: {d.Texts[0]}"))];

    /// <summary>Addresses and scores of all results, in the form that <see cref="LunrOracle.Search"/> gives them.</summary>
    public string Search(string query) => Search(query, 100_000, "JSON.stringify(results)");

    /// <summary>How many results there are, and the first ones.</summary>
    public string First(string query, int count) => Search(query, count, "answer.total + ' ' + JSON.stringify(results)");

    string Search(string query, int count, string result)
    {
        Engine.SetValue("query", query);
        Engine.SetValue("count", count);
        return Run($$"""
            GuideGen.search.find(query, count).then(function (answer) {
              if (answer.refused) return 'refused: ' + answer.refused;
              if (answer.limits.length > 0) return 'limits: ' + JSON.stringify(answer.limits);
              const results = answer.results.map(function (r) { return [r.address, r.score]; });
              return {{result}};
            })
            """);
    }

    public string Text(string script) => Engine.Evaluate(script).AsString();

    /// <summary>The text a script's promise comes to.</summary>
    public string Run(string script) => Engine.Evaluate(script).UnwrapIfPromise().AsString();

    string? Read(string address)
    {
        var name = address["search/".Length..];
        Loaded.Add(name);
        return Missing.Contains(name) ? null : _files.GetValueOrDefault(name);
    }
}
