using System.Text.Json;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>What the service worker keeps on a device: every file of the site under its hash, the essentials first.</summary>
public sealed class KeptFilesTests
{
    static readonly CompiledSite Site = CompiledSite.Of(Guides.Small);

    static JsonElement Guide { get; } = ReadGuide();

    [Fact]
    public void Every_other_file_is_listed_with_the_beginning_of_its_hash()
    {
        var expected = Site.Files.Where(f => f.Key != "keep.js").ToDictionary(f => f.Key, f => Convert.ToHexStringLower(SiteManifest.HashOf(f.Value))[..16]);

        Assert.Equal(expected, Guide.GetProperty("files").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetString()!));
    }

    [Fact]
    public void The_essentials_draw_the_start_page_the_codes_and_the_safety_page()
    {
        var essentials = Guide.GetProperty("essentials").EnumerateArray().Select(e => e.GetString()).ToList();

        Assert.Superset(new HashSet<string?>(["index.html", "codes.html", "safety.html", "404.html"]), essentials.ToHashSet());
        Assert.Superset(Site.Files.Keys.Where(k => k.StartsWith("assets/", StringComparison.Ordinal)).ToHashSet<string?>(), essentials.ToHashSet());
        Assert.All(essentials, e => Assert.True(Site.Files.ContainsKey(e!)));
    }

    [Fact]
    public void The_version_follows_from_the_content_alone()
    {
        var again = CompiledSite.Compile(Guides.Open(Guides.Small), 1).Files["keep.js"];
        var other = CompiledSite.Of(Guides.Demo).Files["keep.js"];

        Assert.Equal(Site.Files["keep.js"], again);
        Assert.NotEqual(Site.Files["keep.js"], other);
    }

    static JsonElement ReadGuide()
    {
        var line = Site.Text("keep.js").Split('\n')[0];
        return JsonDocument.Parse(line["const GUIDE = ".Length..^1]).RootElement;
    }
}
