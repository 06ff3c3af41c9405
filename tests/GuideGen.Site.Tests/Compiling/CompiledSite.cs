using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>A page as a browser would see it.</summary>
sealed record SitePage(string Address, IHtmlDocument Document);

/// <summary>A guide and the site it became, in memory.</summary>
sealed class CompiledSite
{
    static readonly ConcurrentDictionary<string, Lazy<CompiledSite>> Known = new();

    CompiledSite(GuideContent guide, ImmutableSortedDictionary<string, byte[]> files)
    {
        (Guide, Files) = (guide, files);
        var parser = new HtmlParser();
        Pages = files.Keys.Where(a => a.EndsWith(".html", StringComparison.Ordinal))
            .ToImmutableSortedDictionary(a => a, a => new SitePage(a, parser.ParseDocument(Text(a))), StringComparer.Ordinal);
    }

    public GuideContent Guide { get; }

    public ImmutableSortedDictionary<string, byte[]> Files { get; }

    public ImmutableSortedDictionary<string, SitePage> Pages { get; }

    public string Text(string address) => Encoding.UTF8.GetString(Files[address]);

    /// <summary>Compiled once, then shared: neither the site nor its pages are changed by a test.</summary>
    public static CompiledSite Of(string guide)
    {
        var files = Guides.Open(guide);
        return Known.GetOrAdd(guide, _ => new(() => Compile(files, 2))).Value;
    }

    public static CompiledSite Compile(IGuideFiles files, int threads)
    {
        var target = new MemoryTarget(threads);
        var result = SiteCompiler.Compile(files, ThemeFiles.BuiltIn, target, new Unheard());
        Assert.Empty(result.Findings.Where(f => f.Severity == Severity.Error).Select(f => $"{f.Span}: {f.Message}"));
        return new CompiledSite(result.Guide, target.Files);
    }

    public sealed class Unheard : IProgress<CompileStage>
    {
        public void Report(CompileStage value)
        {
        }
    }
}
