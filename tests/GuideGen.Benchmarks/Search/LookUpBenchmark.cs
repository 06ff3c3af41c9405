using System.Globalization;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Benchmarks.Search;

/// <summary>The demo guide as an owner has it: how long the box takes to look a code up after each key, and how large its index is.</summary>
static class LookUpBenchmark
{
    /// <summary>Every code of the guide and some that it lacks, as typed and with the usual slips, key by key. The first key counts as it comes, each later one as the quickest of three, so that what else the machine does is left out.</summary>
    const string TypeEverything =
        """
        async () => {
          await GuideGen.loadCodes();
          const own = GuideGen.data.codes.map(c => c.code);
          const others = ["P0016", "P0455", "P0741", "C0561", "B1234", "U0416", "P3498"];
          const slips = [c => c, c => c.toLowerCase(), c => c[0] + " " + c.slice(1), c => c.replace("0", "O"), c => c.slice(0, 3) + c.slice(4) , c => c.slice(0, 2) + c[3] + c[2] + c[4]];
          const texts = [...own, ...others].flatMap(c => slips.map(slip => slip(c)));
          const times = [];
          for (const text of texts) {
            for (let length = 1; length <= text.length; length++) {
              let least = Infinity;
              for (let again = 0; again < (times.length === 0 ? 1 : 3); again++) {
                const start = performance.now();
                GuideGen.look.find(text.slice(0, length));
                least = Math.min(least, performance.now() - start);
              }
              times.push(least);
            }
          }
          return times;
        }
        """;

    public static async Task Run(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("guidegen-look-up-").FullName;
        try
        {
            var site = Path.Combine(folder, "site");
            var files = new FolderFiles(Repository.Root);
            if (!SiteCompiler.Compile(files, ThemeFiles.BuiltIn, new FolderTarget(site, 2), new Silent()).IsWritten) throw new InvalidOperationException("The demo guide has errors.");
            var times = await Type(new Uri(Path.Combine(site, "index.html")).AbsoluteUri);
            var first = times[0];
            Array.Sort(times);
            var index = Size(Path.Combine(site, "search"), "*.js");
            var markdown = Size(Repository.PathTo("content"), "*.md");
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"""
                | keys | ms the first key | ms a key: median, 99 %, most | keys over 2 ms | search index and lunr, KB | Markdown, KB | index of the Markdown |
                | --: | --: | --: | --: | --: | --: | --: |
                | {times.Length:N0} | {first:F1} | {times[times.Length / 2]:F2}, {times[times.Length * 99 / 100]:F2}, {times[^1]:F2} | {times.Count(t => t > 2)} | {index / 1024:N0} | {markdown / 1024:N0} | {(double)index / markdown:F2} |
                """));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    static async Task<double[]> Type(string address)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox"] });
        var page = await browser.NewPageAsync();
        await page.GotoAsync(address);
        return await page.EvaluateAsync<double[]>(TypeEverything);
    }

    static long Size(string folder, string pattern) => Directory.EnumerateFiles(folder, pattern, SearchOption.AllDirectories).Sum(f => new FileInfo(f).Length);
}
