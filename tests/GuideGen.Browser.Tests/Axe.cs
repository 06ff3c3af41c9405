using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>axe-core, the checker of accessibility, in a page.</summary>
static class Axe
{
    static readonly Lazy<string> Script = new(() =>
    {
        using var resource = typeof(Axe).Assembly.GetManifestResourceStream("axe.min.js")!;
        using var reader = new StreamReader(resource);
        return reader.ReadToEnd();
    });

    /// <summary>What it finds wrong in the page as it stands, each with its place and what would mend it.</summary>
    /// <param name="scope">A selector of the part to look at; the whole page takes some seconds.</param>
    /// <param name="rules">Only these rules of axe-core; all when there are none.</param>
    public static async Task<string[]> Violations(IPage page, string scope = "html", params string[] rules)
    {
        await page.EvaluateAsync(Script.Value);
        return await page.EvaluateAsync<string[]>(
            "async ([scope, rules]) => (await axe.run(scope, { preload: false, resultTypes: ['violations'], ...(rules.length > 0 ? { runOnly: { type: 'rule', values: rules } } : {}) })).violations.flatMap(v => v.nodes.map(n => v.id + ' ' + n.target.join(' ') + ' ' + n.failureSummary))", new object[] { scope, rules });
    }

    /// <summary>One line for each rule that is broken, however often.</summary>
    public static void IsContent(IEnumerable<string> violations)
    {
        var wrong = violations.GroupBy(v => v.Split(' ')[0]).Select(g => $"{g.Count()} times {g.First()}").ToList();
        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }
}
