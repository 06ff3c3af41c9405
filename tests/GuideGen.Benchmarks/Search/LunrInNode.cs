using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using GuideGen.Search;
using GuideGen.Testing;

namespace GuideGen.Benchmarks.Search;

/// <summary>The same index built by lunr.js itself, in node.</summary>
static class LunrInNode
{
    /// <returns>The bytes, and what building and serialising them took.</returns>
    public static (byte[] Json, Effort Effort) Build(ImmutableArray<SearchDocument> pages, string folder)
    {
        var (lunr, documents, index) = (Path.Combine(folder, "lunr.js"), Path.Combine(folder, "documents.json"), Path.Combine(folder, "index.json"));
        File.WriteAllText(lunr, LunrScript.Text);
        File.WriteAllBytes(documents, JsonSerializer.SerializeToUtf8Bytes(new
        {
            fields = SearchDocument.Fields.Select(f => new { name = f.Name, boost = f.Boost }),
            documents = pages.Select(p => new { @ref = p.Address, name = p.Name, codes = string.Join(' ', p.Codes), summary = p.Summary, body = p.Body }),
        }));
        var start = new ProcessStartInfo("node") { RedirectStandardOutput = true };
        string[] arguments = ["--max-old-space-size=8192", Repository.PathTo("tests", "GuideGen.Benchmarks", "Search", "lunr-build.js"), lunr, documents, index];
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var node = Process.Start(start)!;
        var printed = node.StandardOutput.ReadToEnd().Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToList();
        node.WaitForExit();
        return (File.ReadAllBytes(index), new Effort(printed[0], printed[1]));
    }
}
