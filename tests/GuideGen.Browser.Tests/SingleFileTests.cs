using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Bundling;
using GuideGen.Site.Rendering;
using GuideGen.Testing;

namespace GuideGen.Browser.Tests;

/// <summary>A guide in one file, opened as a phone opens a file that somebody sent.</summary>
public sealed class SingleFileTests(BrowserHouse house) : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public async Task It_asks_for_nothing_and_its_links_lead_to_its_pages()
    {
        var file = temp.PathTo("guide.html");
        SiteCompiler.Compile(new FolderFiles(Repository.Root), ThemeFiles.BuiltIn, new SingleFileTarget(file, Environment.ProcessorCount), new BrowserHouse.Unheard());
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        var requests = new List<string>();
        visit.Page.Request += (_, request) => requests.Add(request.Url);
        var address = new Uri(file).AbsoluteUri;

        await visit.Page.GotoAsync(address);
        await visit.Page.Locator("a[href='#faults.charge-air-hose-split']").First.ClickAsync();

        Assert.EndsWith("#faults.charge-air-hose-split", visit.Page.Url, StringComparison.Ordinal);
        Assert.True(await visit.Page.Locator("[id='faults.charge-air-hose-split'] h1").IsVisibleAsync());
        Assert.NotEqual("rgba(0, 0, 0, 0)", await visit.Page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor"));
        Assert.Equal([address], requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)).Select(r => r.Split('#')[0]).Distinct());
    }
}
