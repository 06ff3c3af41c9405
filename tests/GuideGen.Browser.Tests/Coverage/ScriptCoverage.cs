using System.Collections.Frozen;
using System.Globalization;
using System.Text.Json;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests.Coverage;

/// <summary>
/// Which characters of the theme's scripts ran in any visit, as V8's block coverage tells (Chrome DevTools Protocol, Profiler domain).
/// Only counted where a build was asked for it (<c>-p:ScriptCoverage=FILE</c>), since counting slows pages down.
/// </summary>
/// <param name="site">The folder of the demo guide's site; its scripts are the same in every site, by the hashes in their names.</param>
/// <remarks>The service worker (keep.js) runs apart from all pages and is not seen.</remarks>
sealed class ScriptCoverage(string site)
{
    readonly FrozenDictionary<string, CoveredScript> scripts = Directory.EnumerateFiles(Path.Combine(site, "assets"), "*.js")
        .ToFrozenDictionary(f => Path.GetFileName(f), f => new CoveredScript(Path.GetFileName(f).Split('.')[0], File.ReadAllText(f)));

    /// <summary>Where the table goes; empty where nothing is counted.</summary>
    static string Table => Repository.Said("ScriptCoverage");

    public static bool IsOn => Table.Length > 0;

    public static async Task<ICDPSession> Begin(IBrowserContext context, IPage page)
    {
        var session = await context.NewCDPSessionAsync(page);
        await session.SendAsync("Profiler.enable");
        await session.SendAsync("Profiler.startPreciseCoverage", new() { ["callCount"] = false, ["detailed"] = true });
        return session;
    }

    /// <summary>Adds what ran so far in a page.</summary>
    public async Task Take(ICDPSession session)
    {
        var told = (await session.SendAsync("Profiler.takePreciseCoverage"))!.Value;
        foreach (var script in told.GetProperty("result").EnumerateArray())
        {
            if (!scripts.TryGetValue(script.GetProperty("url").GetString()!.Split('/')[^1], out var covered)) continue;
            var ranges = script.GetProperty("functions").EnumerateArray().SelectMany(f => f.GetProperty("ranges").EnumerateArray()).Select(Range).ToList();
            covered.Add(ranges);
        }
    }

    static CoveredRange Range(JsonElement range) =>
        new(range.GetProperty("startOffset").GetInt32(), range.GetProperty("endOffset").GetInt32(), range.GetProperty("count").GetInt32() > 0);

    /// <summary>Writes a Markdown table, a row for each script of the theme, those that never ran included.</summary>
    public void Write()
    {
        var all = scripts.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => s.Value).ToList();
        var rows = all.Select(s => s.Row).Append(string.Create(CultureInfo.InvariantCulture, $"| all | {all.Sum(s => s.Code)} | {100.0 * all.Sum(s => s.Ran) / all.Sum(s => s.Code):F1} | |"));
        File.WriteAllLines(Table, ["| script | characters of code | ran, % | lines that never ran |", "| --- | ---: | ---: | --- |", .. rows]);
    }
}

/// <summary>A stretch of a script, from a first character to one past the last.</summary>
readonly record struct CoveredRange(int Start, int End, bool Ran);
