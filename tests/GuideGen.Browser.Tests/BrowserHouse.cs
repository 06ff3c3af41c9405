using System.Text.RegularExpressions;
using GuideGen.Browser.Tests;
using GuideGen.Browser.Tests.Coverage;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(BrowserHouse))]

namespace GuideGen.Browser.Tests;

/// <summary>One browser and one compiled demo guide for all tests, reachable as files and over a server.</summary>
public sealed partial class BrowserHouse : IAsyncLifetime
{
    public const string FromFile = "file";
    public const string FromServer = "server";

    public static readonly string[] Places = [FromFile, FromServer];

    readonly TempFolder temp = new();
    ScriptCoverage? coverage;
    IPlaywright? playwright;
    IBrowser? browser;
    StaticServer? server;
    string[]? extremes;

    string SiteFolder => temp.PathTo("site");

    public async ValueTask InitializeAsync()
    {
        var files = new FolderFiles(Repository.Root);
        var result = SiteCompiler.Compile(files, ThemeFiles.BuiltIn, new FolderTarget(SiteFolder, Environment.ProcessorCount), new Unheard());
        Assert.True(result.IsWritten, "the demo guide has errors: " + string.Join("; ", result.Findings.Select(f => $"{f.Span}: {f.Message}")));
        coverage = ScriptCoverage.IsOn ? new ScriptCoverage(SiteFolder) : null;
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
        coverage?.Write();
    }

    /// <summary>A visitor with a clean browser.</summary>
    /// <param name="from"><see cref="FromFile"/> or <see cref="FromServer"/>.</param>
    public Task<Visit> Visit(string from, BrowserNewContextOptions? options = null) =>
        VisitAt(from == FromFile ? new Uri(SiteFolder + "/").AbsoluteUri : server!.Root, options);

    /// <summary>A visitor of another site than the demo guide.</summary>
    public async Task<Visit> VisitAt(string root, BrowserNewContextOptions? options = null)
    {
        var context = await browser!.NewContextAsync(options ?? new());
        var page = await context.NewPageAsync();
        if (coverage is null) return new Visit(context, page, root, () => Task.CompletedTask);
        var session = await ScriptCoverage.Begin(context, page);
        return new Visit(context, page, root, () => coverage.Take(session));
    }

    /// <summary>Of every kind of page the longest and the shortest: what is right for both is right between them.</summary>
    public IEnumerable<string> ExtremesOfEveryKind() => extremes ??=
    [
        .. Directory.EnumerateFiles(SiteFolder, "*.html", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .GroupBy(f => KindOf().Match(File.ReadAllText(f)).Groups[1].Value)
            .SelectMany(g => g.OrderBy(f => new FileInfo(f).Length).ToList() is { Count: > 1 } all ? [all[0], all[^1]] : g.ToList())
            .Select(f => Path.GetRelativePath(SiteFolder, f).Replace('\\', '/')),
    ];

    /// <summary>The size of a file of the site in bytes.</summary>
    public long Size(string address) => new FileInfo(Path.Combine(SiteFolder, address)).Length;

    /// <summary>The addresses of all pages in a folder of the site, in order.</summary>
    public static IEnumerable<string> AddressesOf(string folder) =>
        Directory.EnumerateFiles(Repository.PathTo("content", folder)).Select(f => $"{folder}/{Path.GetFileNameWithoutExtension(f)}.html").Order(StringComparer.Ordinal);

    [GeneratedRegex("<body class=\"on-([a-z-]+)")]
    private static partial Regex KindOf();

    public sealed class Unheard : IProgress<CompileStage>
    {
        public void Report(CompileStage value)
        {
        }
    }
}
