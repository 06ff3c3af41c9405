using System.Globalization;
using GuideGen.Browser.Tests;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Benchmarks.Pages;

/// <summary>
/// The demo guide on a phone: Chromium with its processor slowed to a quarter. A frame of 60 in a second lasts 16.7 ms; what takes
/// longer is felt as a stumble. Times are of the page's own script and layout.
/// </summary>
static class PageBenchmark
{
    const int Slower = 4, Visits = 5;
    const double Frame = 1_000 / 60.0;

    /// <summary>Lighthouse's mobile profile, applied to the connection itself: 150 ms there and back, 1.6 Mbit in a second.</summary>
    const int RoundTrip = 150;
    const double BytesInASecond = 1_638_400 / 8;

    /// <summary>Bytes of a page that says a good deal.</summary>
    const int UsualPage = 27_000;

    const string TimeClicks = """
        () => {
          const click = HTMLElement.prototype.click;
          window.times = [];
          HTMLElement.prototype.click = function () {
            const start = performance.now();
            click.call(this);
            void document.body.offsetHeight;
            window.times.push(performance.now() - start);
          };
        }
        """;

    const string Rank = """
        () => {
          const often = n => Array.from({ length: n }, (_, i) => i);
          const model = {
            hypotheses: often(300).map(h => ({ id: "h" + h, prior: 1 / 300 })),
            findings: often(60).map(f => ({ id: "f" + f, likelihoods: often(300).map(h => 0.05 + 0.9 * ((h * 7 + f * 13) % 10) / 10) })),
            groups: [], checks: [], setups: [],
          };
          return often(40).map(run => {
            const answers = { findings: Object.fromEntries(often(60).map(f => ["f" + f, (f + run) % 3 > 0])), outcomes: {} };
            const start = performance.now();
            const shown = GuideGen.ranking.rank(model, answers).slice(0, 8);
            return shown.every(c => c.probability > 0 && c.weights.length === 60) ? performance.now() - start : Infinity;
          });
        }
        """;

    /// <summary>The scripts that judge come with the first input, which does not count.</summary>
    const string Judge = """
        async () => {
          const form = document.querySelector("form.judge"), value = form.querySelector("input[name=value]"), verdict = form.querySelector(".verdict");
          const said = async wait => {
            for (let i = 0; i < 1000 && verdict.textContent === ""; i++) await wait();
            return verdict.textContent !== "";
          };
          const enter = text => { verdict.textContent = ""; value.value = text; value.dispatchEvent(new Event("input", { bubbles: true })); };
          enter("1");
          await said(() => new Promise(done => setTimeout(done, 20)));
          const times = [];
          for (let i = 0; i < 60; i++) {
            const start = performance.now();
            enter(String(1 + i / 7));
            const isSaid = await said(() => null);
            void document.body.offsetHeight;
            times.push(isSaid ? performance.now() - start : Infinity);
          }
          return times;
        }
        """;

    const string FirstPaint = """
        () => new Promise(done => new PerformanceObserver(list => {
          for (const entry of list.getEntries()) if (entry.name === "first-contentful-paint") done(entry.startTime);
        }).observe({ type: "paint", buffered: true }))
        """;

    public static async Task Run(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("guidegen-pages-").FullName;
        try
        {
            var site = Path.Combine(folder, "site");
            if (!SiteCompiler.Compile(new FolderFiles(Repository.Root), ThemeFiles.BuiltIn, new FolderTarget(site, 2), new Silent()).IsWritten) throw new InvalidOperationException("The demo guide has errors.");
            await using var server = new StaticServer(site, "/guide/");
            using var playwright = await Playwright.CreateAsync();
            await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox"] });
            await output.WriteLineAsync("| what | times | ms: first | median | most | longer than a frame, % |\n| --- | ---: | ---: | ---: | ---: | ---: |");
            var steps = await Steps(browser, server, Path.Combine(site, "trees"));
            await output.WriteLineAsync(Row("a step of a tree", [.. steps.SelectMany(s => s)]));
            await output.WriteLineAsync(Row($"the same, the middle of {Visits} walks", [.. steps.Select(s => s.Order().ElementAt(Visits / 2))]));
            await output.WriteLineAsync(Row("ranking 300 faults by 60 findings", await On(browser, server, "weigh.html", page => Measure(page, "() => GuideGen.ranking", Rank))));
            await output.WriteLineAsync(Row("judging a reading", await On(browser, server, "checks/boost-live-drive.html", page => Measure(page, "() => document.querySelector('form.judge')", Judge))));
            var usual = Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories).OrderBy(f => Math.Abs(new FileInfo(f).Length - UsualPage)).ThenBy(f => f, StringComparer.Ordinal).First();
            await output.WriteLineAsync(Row($"first content of {Path.GetRelativePath(site, usual)}, {new FileInfo(usual).Length:N0} bytes", await Paints(browser, server, Path.GetRelativePath(site, usual).Replace('\\', '/')), isInFrame: false));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    static string Row(string what, double[] times, bool isInFrame = true) => string.Create(CultureInfo.InvariantCulture, $"| {what} | {times.Length} | {times[0]:F1} | {times.Order().ElementAt(times.Length / 2):F1} | {times.Max():F1} | {(isInFrame ? 100.0 * times.Count(t => t > Frame) / times.Length : null):F1} |");

    /// <returns>Of every step of every tree of the guide, how long it took in each of several walks: what it takes itself shows in the middle, what came in between only once.</returns>
    static async Task<List<double[]>> Steps(IBrowser browser, StaticServer server, string trees)
    {
        var walker = Repository.Read("tests", "GuideGen.Browser.Tests", "walker.js");
        var steps = new List<double[]>();
        foreach (var tree in Directory.EnumerateFiles(trees, "*.html").Select(Path.GetFileName).Order(StringComparer.Ordinal))
        {
            var walks = await On(browser, server, "trees/" + tree, async page =>
            {
                await page.WaitForFunctionAsync("() => document.body.classList.contains('walking')");
                await page.EvaluateAsync(TimeClicks);
                var walks = new List<double[]>();
                for (var visit = 0; visit < Visits; visit++)
                {
                    await page.EvaluateAsync(walker);
                    walks.Add(await page.EvaluateAsync<double[]>("() => window.times.splice(0)"));
                }

                return walks;
            });
            steps.AddRange(Enumerable.Range(0, walks[0].Length).Select(i => walks.Select(w => w[i]).ToArray()));
        }

        return steps;
    }

    static async Task<double[]> Measure(IPage page, string isThere, string measure)
    {
        await page.WaitForFunctionAsync(isThere);
        return await page.EvaluateAsync<double[]>(measure);
    }

    static async Task<double[]> Paints(IBrowser browser, StaticServer server, string address)
    {
        var times = new List<double>();
        for (var i = 0; i < Visits; i++) times.Add(await On(browser, server, address, page => page.EvaluateAsync<double>(FirstPaint), isFar: true));
        return [.. times];
    }

    /// <param name="isFar">True for the connection of the profile.</param>
    static async Task<T> On<T>(IBrowser browser, StaticServer server, string address, Func<IPage, Task<T>> measure, bool isFar = false)
    {
        await using var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, ServiceWorkers = ServiceWorkerPolicy.Block });
        var page = await context.NewPageAsync();
        var devTools = await context.NewCDPSessionAsync(page);
        await devTools.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = Slower });
        if (isFar)
        {
            await devTools.SendAsync("Network.enable");
            await devTools.SendAsync("Network.emulateNetworkConditions", new() { ["offline"] = false, ["latency"] = RoundTrip, ["downloadThroughput"] = BytesInASecond, ["uploadThroughput"] = BytesInASecond });
        }

        await page.GotoAsync(server.Root + address);
        return await measure(page);
    }
}
