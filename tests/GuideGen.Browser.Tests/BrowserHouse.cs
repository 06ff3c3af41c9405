using GuideGen.Browser.Tests;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(BrowserHouse))]

namespace GuideGen.Browser.Tests;

/// <summary>One browser and one compiled demo guide for all tests, reachable as files and over a server.</summary>
public sealed class BrowserHouse : IAsyncLifetime
{
    public const string FromFile = "file";
    public const string FromServer = "server";

    public static readonly string[] Places = [FromFile, FromServer];

    readonly TempFolder temp = new();
    IPlaywright? playwright;
    IBrowser? browser;
    StaticServer? server;

    string SiteFolder => temp.PathTo("site");

    public async ValueTask InitializeAsync()
    {
        var files = new FolderFiles(Repository.Root);
        var result = SiteCompiler.Compile(files, new Theme(ThemeFiles.BuiltIn), new FolderTarget(SiteFolder, Environment.ProcessorCount), new Unheard());
        Assert.True(result.IsWritten, "the demo guide has errors: " + string.Join("; ", result.Findings.Select(f => $"{f.Span}: {f.Message}")));
        server = new StaticServer(SiteFolder, "/club/guide/");
        playwright = await Playwright.CreateAsync();
        browser = await Chromium.Launch(playwright);
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
        if (server is not null) await server.DisposeAsync();
        temp.Dispose();
    }

    /// <summary>A visitor with a clean browser.</summary>
    /// <param name="from"><see cref="FromFile"/> or <see cref="FromServer"/>.</param>
    public Task<Visit> Visit(string from, BrowserNewContextOptions? options = null) =>
        VisitAt(from == FromFile ? new Uri(SiteFolder + "/").AbsoluteUri : server!.Root, options);

    /// <summary>A visitor of another site than the demo guide.</summary>
    public async Task<Visit> VisitAt(string root, BrowserNewContextOptions? options = null)
    {
        var context = await browser!.NewContextAsync(options ?? new());
        return new Visit(context, await context.NewPageAsync(), root);
    }

    /// <summary>The first page of every kind, by its address, and every page that stands once.</summary>
    public IEnumerable<string> OneOfEveryKind() =>
        Directory.EnumerateFiles(SiteFolder, "*.html", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(SiteFolder, f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)
            .GroupBy(a => a.Contains('/', StringComparison.Ordinal) ? a.Split('/')[0] : a)
            .Select(g => g.First());

    public sealed class Unheard : IProgress<CompileStage>
    {
        public void Report(CompileStage value)
        {
        }
    }
}
