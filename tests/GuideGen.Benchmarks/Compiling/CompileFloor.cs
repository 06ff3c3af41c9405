using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using GuideGen.Guide.Loading;
using GuideGen.Search;
using GuideGen.Site;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using Markdig;
using Scriban;
using YamlDotNet.Core;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>Seconds of one thread for what no compile can leave out.</summary>
/// <param name="Template">Every page of the site by its own templates.</param>
/// <param name="BareTemplate">As many pages of the same lengths by one template of few holes: less than any look takes that shows what a fault's page has to show.</param>
sealed record Floor(double Read, double Markdown, double Yaml, double Template, double BareTemplate, double Index, double Write)
{
    public double Sum => Bare - BareTemplate + Template;

    public double Bare => Read + Markdown + Yaml + BareTemplate + Index + Write;
}

/// <summary>
/// The least a compile has to do, by the same libraries and without a rule, a link or a computation: read the files, Markdown to
/// HTML, YAML to events, each page that the site has through its templates, the search index of as many, and write as many bytes as
/// the site has.
/// </summary>
static class CompileFloor
{
    const string Fence = "---\n";

    /// <summary>Characters of a page around its body.</summary>
    const int Frame = 6_000;

    public static Floor Of(string guide, string site)
    {
        var files = new DirectoryInfo(site).GetFiles("*", SearchOption.AllDirectories);
        var sizes = files.Select(f => (int)f.Length).ToList();
        var drawn = files.Where(f => f.Extension == ".html").Select(f => (int)f.Length).ToList();
        var target = Directory.CreateDirectory(site + "-floor").FullName;
        var (texts, read) = Timed(() => Directory.EnumerateFiles(guide, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText).ToList());
        var pages = texts.Where(t => t.StartsWith(Fence, StringComparison.Ordinal)).Select(t => t[(t.IndexOf(Fence, Fence.Length, StringComparison.Ordinal) + Fence.Length)..]).ToList();
        var pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();
        var (bodies, markdown) = Timed(() => pages.ConvertAll(p => Markdown.ToHtml(p, pipeline)));
        var (_, yaml) = Timed(() => texts.Sum(Events));
        var page = Template.Parse(new string('x', Frame - 2_000) + "<title>{{ title }}</title>{{ for i in links }}<a href=\"{{ i }}\">{{ i }}</a>{{ end }}<main>{{ body }}</main>");
        var links = Enumerable.Range(0, 40).Select(i => $"faults/fault-{i}.html").ToArray();
        var filler = string.Concat(Enumerable.Repeat(bodies[0], 1 + (drawn.Max() / bodies[0].Length)));
        var (_, bareTemplate) = Timed(() => drawn.Sum(length => page.Render(new { title = "A page", links, body = filler[..Math.Max(0, length - Frame)] }).Length));
        // The pages of codes have a few words each.
        var documents = drawn.Select((_, i) => Document(i, i < pages.Count ? pages[i] : "")).ToImmutableArray();
        var (_, index) = Timed(() => SearchDocument.Index(documents));
        var bytes = Encoding.UTF8.GetBytes(new string('x', sizes.Max()));
        var (_, write) = Timed(() => sizes.Select((size, i) => Put(Path.Combine(target, $"{i}"), bytes.AsSpan(0, size))).Count());
        return new(read, markdown, yaml, Templates(guide), bareTemplate, index, write);
    }

    /// <summary>What the templates are given is made beside the clock.</summary>
    static double Templates(string guide)
    {
        var reading = GuideReading.Of(GuideLoader.Load(new FolderFiles(guide)));
        var plan = SitePlan.Make([(reading.Guide, reading.Weights!)])[0];
        var theme = GuideTheme.Of(ThemeFiles.BuiltIn, reading.Guide).Theme;
        var renderer = new SiteRenderer(plan, theme);
        var clock = new Stopwatch();
        foreach (var page in plan.Pages)
        {
            var model = renderer.ModelOf(page);
            using var drawn = new TextBuffer();
            clock.Start();
            theme.DrawPage(page.Template, model, drawn);
            clock.Stop();
        }

        return clock.Elapsed.TotalSeconds;
    }

    static SearchDocument Document(int number, string text) => new($"faults/{number}.html", $"Page {number} of the guide", [], text[..Math.Min(100, text.Length)], text);

    static (T Made, double Seconds) Timed<T>(Func<T> make)
    {
        var clock = Stopwatch.StartNew();
        return (make(), clock.Elapsed.TotalSeconds);
    }

    static int Events(string text)
    {
        var end = text.StartsWith(Fence, StringComparison.Ordinal) ? text.IndexOf(Fence, Fence.Length, StringComparison.Ordinal) : text.Length;
        var parser = new Parser(new StringReader(text[..end]));
        var count = 0;
        while (parser.MoveNext()) count++;
        return count;
    }

    static bool Put(string path, ReadOnlySpan<byte> bytes)
    {
        File.WriteAllBytes(path, bytes);
        return true;
    }
}
