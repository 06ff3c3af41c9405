using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>How a host's visitor comes to have the guide on the device: what is told meanwhile, a newer guide, and a device without room.</summary>
public sealed class KeepingTests(BrowserHouse house) : IAsyncLifetime
{
    const string Page = "content/faults/charge-air-hose-split.md";
    const string Newer = "What a newer edition of the guide says.";

    readonly TempFolder temp = new();
    StaticServer? server;

    public ValueTask InitializeAsync()
    {
        FixtureGuide.CopyTo(temp.PathTo("guide"));
        Compile();
        server = new StaticServer(temp.PathTo("site"), "/guide/");
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        if (server is not null) await server.DisposeAsync();
        temp.Dispose();
    }

    [Fact]
    public async Task Saving_is_told_with_its_progress_and_with_its_end()
    {
        await using var visit = await VisitAndListen();
        await visit.Open("index.html");
        await IsTold(visit, "The whole guide is on this device now and opens without a signal.");

        var heard = await visit.Page.EvaluateAsync<string[]>("heard");
        var saving = heard.Where(h => h.StartsWith("Saving the guide for use without a signal: ", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(saving);
        var percent = saving.Select(s => int.Parse(s.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(percent.Order(), percent);
        Assert.InRange(percent[^1], 1, 100);
    }

    [Fact]
    public async Task A_newer_guide_is_offered_never_forced_and_clears_away_the_older_when_it_is_taken()
    {
        await using var visit = await VisitAndListen();
        await visit.Open("faults/charge-air-hose-split.html");
        await IsControlled(visit);
        File.WriteAllText(temp.PathTo("guide", Page), File.ReadAllText(temp.PathTo("guide", Page)).Replace("## What happens", $"## What happens\n\n{Newer}", StringComparison.Ordinal));
        Compile();
        await visit.Page.EvaluateAsync("navigator.serviceWorker.ready.then(r => r.update())");
        await IsTold(visit, "A newer version of this guide is ready.");
        await visit.Page.EvaluateAsync("navigator.serviceWorker.dispatchEvent(new MessageEvent('message', { data: { kind: 'kept' } }))");
        await IsTold(visit, "A newer version of this guide is ready.");

        await visit.Page.ReloadAsync();
        Assert.DoesNotContain(Newer, await visit.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Use it now" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync(Newer, new() { Timeout = 30_000 });
        Assert.Equal(1, await visit.Page.EvaluateAsync<int>("caches.keys().then(k => k.length)"));
    }

    [Fact]
    public async Task A_device_without_room_is_told_so_and_keeps_the_start_page_the_codes_and_the_safety_page()
    {
        await using var visit = await VisitAndListen();
        await visit.Open("404.html");
        await IsControlled(visit);
        var essentials = await visit.Page.EvaluateAsync<int>(
            """
            fetch("keep.js").then(a => a.text()).then(async text => {
              const guide = JSON.parse(text.slice("const GUIDE = ".length, text.indexOf("\n") - 1));
              let sum = 0;
              for (const path of guide.essentials) sum += (await (await fetch(path)).blob()).size;
              return sum;
            })
            """);
        await using var second = await VisitAndListen();
        var tools = await second.Page.Context.NewCDPSessionAsync(second.Page);
        await tools.SendAsync("Storage.overrideQuotaForOrigin", new() { ["origin"] = new Uri(server!.Root).GetLeftPart(UriPartial.Authority), ["quotaSize"] = (essentials * 3) / 2 });
        await second.Open("index.html");
        await IsTold(second, "There is no room for the whole guide on this device. The start page, the codes and the safety page are kept.");
        await IsControlled(second);
        await second.Page.Context.SetOfflineAsync(true);
        foreach (var (address, heading) in new[] { ("codes.html", "Codes"), ("safety.html", "Safety") })
        {
            await second.Open(address);
            Assert.Contains(heading, await second.Page.Locator("h1").InnerTextAsync(), StringComparison.OrdinalIgnoreCase);
        }
    }

    /// <summary>A clean visitor whose page writes down every word of the line about keeping.</summary>
    async Task<Visit> VisitAndListen()
    {
        var visit = await house.VisitAt(server!.Root);
        await visit.Page.AddInitScriptAsync(
            """
            globalThis.heard = [];
            addEventListener("DOMContentLoaded", () => new MutationObserver(() => heard.push(document.querySelector("#_offline [role=status]").textContent))
              .observe(document.getElementById("_offline"), { subtree: true, childList: true, characterData: true }));
            """);
        return visit;
    }

    static Task IsTold(Visit visit, string words) =>
        Assertions.Expect(visit.Page.Locator("#_offline [role=status]")).ToHaveTextAsync(words, new() { Timeout = 60_000 });

    static async Task IsControlled(Visit visit) =>
        await visit.Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null", null, new() { Timeout = 60_000 });

    void Compile() => Assert.True(
        SiteCompiler.Compile(new FolderFiles(temp.PathTo("guide")), ThemeFiles.BuiltIn, new FolderTarget(temp.PathTo("site"), 1), new BrowserHouse.Unheard()).IsWritten);
}
