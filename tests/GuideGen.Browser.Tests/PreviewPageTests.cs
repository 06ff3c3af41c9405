using GuideGen.Guide.Loading;
using GuideGen.Site.Preview;
using GuideGen.Site.Rendering;
using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>What an author sees in the browser while the guide is written.</summary>
public sealed class PreviewPageTests(BrowserHouse house) : IAsyncLifetime
{
    const string Page = "faults/charge-air-hose-split.html";
    const string Heading = "## What happens";

    readonly TempFolder temp = new();
    readonly CancellationTokenSource closing = new();
    PreviewServer? server;
    Task following = Task.CompletedTask;

    string File => temp.PathTo("content", "faults", "charge-air-hose-split.md");

    public ValueTask InitializeAsync()
    {
        FixtureGuide.CopyTo(temp.PathTo());
        server = PreviewServer.Start(() => new FolderFiles(temp.PathTo()), ThemeFiles.BuiltIn);
        following = Follow();
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await closing.CancelAsync();
        await following;
        if (server is not null) await server.DisposeAsync();
        closing.Dispose();
        temp.Dispose();
    }

    [Fact]
    public async Task An_edit_comes_to_the_open_page_by_itself()
    {
        await using var visit = await Open();
        var before = DateTimeOffset.UtcNow;

        Edit(Heading, $"{Heading}\n\nWritten while the page was open.");

        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync("Written while the page was open.", new() { Timeout = 20_000 });
        TestContext.Current.TestOutputHelper?.WriteLine($"{(DateTimeOffset.UtcNow - before).TotalMilliseconds:0} ms from the edit to the page");
    }

    [Fact]
    public async Task A_page_that_an_edit_is_not_about_is_left_as_it_is()
    {
        await using var visit = await Open("safety.html");
        await visit.Page.EvaluateAsync("window.isTheSame = true");

        Edit(Heading, $"{Heading}\n\nWritten while another page was open.");

        await Assertions.Expect(visit.Page.Locator(".preview-findings[data-version='2']")).ToHaveCountAsync(1, new() { Timeout = 20_000 });
        Assert.True(await visit.Page.EvaluateAsync<bool>("window.isTheSame === true"));
    }

    [Fact]
    public async Task A_broken_page_is_told_on_top_of_the_last_good_one_until_it_is_mended()
    {
        await using var visit = await Open();
        var told = visit.Page.Locator(".preview-findings");

        Edit("hazards:", "hazzards:");

        await Assertions.Expect(told).ToContainTextAsync("content/faults/charge-air-hose-split.md", new() { Timeout = 20_000 });
        await Assertions.Expect(told).ToContainTextAsync("hazzards");
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();

        Edit("hazzards:", "hazards:");

        await Assertions.Expect(told).ToBeHiddenAsync(new() { Timeout = 20_000 });
    }

    async Task<Visit> Open(string page = Page)
    {
        var visit = await house.VisitAt(server!.Address.AbsoluteUri);
        await visit.Open(page);
        await Assertions.Expect(visit.Page.Locator(".preview-findings")).ToHaveCountAsync(1);
        return visit;
    }

    void Edit(string old, string @new)
    {
        var text = System.IO.File.ReadAllText(File);
        Assert.Contains(old, text, StringComparison.Ordinal);
        System.IO.File.WriteAllText(File, text.Replace(old, @new, StringComparison.Ordinal));
    }

    async Task Follow()
    {
        using var watcher = new GuideWatcher(temp.PathTo());
        try
        {
            while (true)
            {
                await watcher.Next(closing.Token);
                server!.Refresh();
            }
        }
        catch (OperationCanceledException)
        {
            // The test is over.
        }
    }
}
