using System.IO.Compression;
using AngleSharp.Html.Parser;
using GuideGen.Site.Bundling;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Bundling;

public sealed class BundleTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void Two_archives_of_a_guide_have_the_same_bytes()
    {
        string[] paths = [temp.PathTo("one.zip"), temp.PathTo("two.zip")];

        Bundle(Guides.Small, new ZipTarget(paths[0], 1));
        Bundle(Guides.Small, new ZipTarget(paths[1], 8));

        Assert.Equal(File.ReadAllBytes(paths[0]), File.ReadAllBytes(paths[1]));
    }

    [Fact]
    public void An_archive_holds_the_whole_site_and_the_list_of_its_files()
    {
        Bundle(Guides.Small, new ZipTarget(temp.PathTo("guide.zip"), 2));

        using var zip = ZipFile.OpenRead(temp.PathTo("guide.zip"));
        var names = zip.Entries.Select(e => e.FullName).ToList();
        Assert.Equal(CompiledSite.Of(Guides.Small).Files.Keys.Append("guide-files.txt").Order(StringComparer.Ordinal), names);
        Assert.All(zip.Entries, e => Assert.Equal(1980, e.LastWriteTime.Year));
        zip.ExtractToDirectory(temp.PathTo("out"));
        Assert.Equal(CompiledSite.Of(Guides.Small).Files["index.html"], File.ReadAllBytes(temp.PathTo("out", "index.html")));
    }

    [Theory]
    [InlineData("zip")]
    [InlineData("html")]
    public void What_somebody_else_wrote_is_refused_and_what_an_earlier_run_wrote_is_replaced(string kind)
    {
        var path = temp.Write("guide." + kind, "theirs");
        ISiteTarget Target() => kind == "zip" ? new ZipTarget(path, 2) : new SingleFileTarget(path, 2);

        Assert.Throws<SiteRefusedException>(() => Bundle(Guides.Small, Target()));
        Assert.Equal("theirs", File.ReadAllText(path));
        File.Delete(path);
        Bundle(Guides.Small, Target());
        Bundle(Guides.Small, Target());
        Assert.Equal([path], Directory.GetFiles(temp.PathTo()));
    }

    [Theory]
    [InlineData(Guides.Small)]
    [InlineData(Guides.Hostile)]
    [InlineData(Guides.Published)]
    public void In_one_file_every_link_leads_to_something_in_it_and_nothing_is_loaded(string guide)
    {
        var site = CompiledSite.Of(guide).Files.Where(f => SinglePageSite.Needs(f.Key)).ToDictionary();

        var page = new HtmlParser().ParseDocument(SinglePageSite.Make(site));

        var inner = page.QuerySelectorAll("[href]").Select(e => e.GetAttribute("href")!).Where(h => !h.StartsWith("https:", StringComparison.Ordinal) && !h.StartsWith("mailto:", StringComparison.Ordinal) && !h.StartsWith("data:", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(inner);
        Assert.All(inner, h => Assert.NotNull(page.GetElementById(Uri.UnescapeDataString(h[1..]))));
        Assert.Empty(page.QuerySelectorAll("script, link, [src]:not([src^='data:']), [srcset]"));
        var ids = page.QuerySelectorAll("[id]").Select(e => e.Id).ToList();
        Assert.Equal(ids.Distinct().Count(), ids.Count);
        Assert.All(page.QuerySelectorAll("[aria-labelledby]").SelectMany(e => e.GetAttribute("aria-labelledby")!.Split(' ')), id => Assert.NotNull(page.GetElementById(id)));
    }

    [Fact]
    public void One_file_has_every_page_of_the_guide()
    {
        var small = CompiledSite.Of(Guides.Small);

        var page = new HtmlParser().ParseDocument(SinglePageSite.Make(small.Files.Where(f => SinglePageSite.Needs(f.Key)).ToDictionary()));

        Assert.All(small.Guide.Entries, e => Assert.Contains(page.QuerySelectorAll("h1"), h => h.TextContent.Contains(e.Name.Value, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_guide_that_is_too_large_for_one_file_is_refused_with_its_size()
    {
        var large = $"<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0{new string(' ', 9 << 20)}\"/></svg>";
        var guide = new Overlay(Guides.Open(Guides.Small))
            .Put("content/images/large.svg", large)
            .Replace("content/parts/charge-air-hose.md", "It carries the boost.", "![The hose](../images/large.svg)");

        var refusal = Assert.Throws<SiteRefusedException>(() =>
            SiteCompiler.Compile(guide, ThemeFiles.BuiltIn, new SingleFileTarget(temp.PathTo("guide.html"), 2), new CompiledSite.Unheard()));

        Assert.Matches("would have 1[0-9][.][0-9] MiB, more than 8 MiB", refusal.Message);
        Assert.False(File.Exists(temp.PathTo("guide.html")));
    }

    static void Bundle(string guide, ISiteTarget target) =>
        SiteCompiler.Compile(Guides.Open(guide), ThemeFiles.BuiltIn, target, new CompiledSite.Unheard());
}
