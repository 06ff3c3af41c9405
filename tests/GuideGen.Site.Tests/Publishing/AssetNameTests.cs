using System.Text;
using System.Text.RegularExpressions;
using GuideGen.Site.Publishing;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Tests.Publishing;

/// <summary>A name that changes with the content: what a browser keeps for good is never stale.</summary>
public sealed partial class AssetNameTests
{
    [Fact]
    public void Every_asset_bears_the_beginning_of_its_own_hash()
    {
        var assets = CompiledSite.Of(Guides.Small).Files.Where(f => f.Key.StartsWith("assets/", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(assets);
        Assert.All(assets, a => Assert.Equal(Convert.ToHexStringLower(SiteManifest.HashOf(a.Value))[..8], Name().Match(a.Key).Groups[1].Value));
    }

    [Fact]
    public void A_change_of_one_script_changes_its_name_and_that_of_the_list_only()
    {
        var (before, after) = (NamesOf("let a;"), NamesOf("let b;"));

        Assert.Equal(["assets/load", "assets/part"], before.Except(after).Select(n => n.Split('.')[0]).Order(StringComparer.Ordinal));
        Assert.Contains("assets/look.", before.Intersect(after).Single(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../", "<script src=\"../assets/part.js\"></script>", true)]
    [InlineData("", "<link href=\"assets/look.css\">", true)]
    [InlineData("../", "<a href=\"https://example.org/assets/part.js\">", false)]
    [InlineData("../", "<p>\"../assets/part.js\"</p>", false)]
    public void Only_addresses_of_assets_are_named_anew(string root, string html, bool isChanged) =>
        Assert.Equal(isChanged, html != Named(Theme("let a;"), html, root));

    [Fact]
    public void A_template_that_asks_for_an_asset_that_is_not_there_is_told_so()
    {
        var fault = Assert.Throws<ThemeException>(() => Named(Theme(""), "<link href=\"assets/lock.css\">", ""));

        Assert.Contains("assets/lock.css", fault.Message, StringComparison.Ordinal);
    }

    static string Named(AssetNames assets, string html, string root)
    {
        using var page = new TextBuffer();
        assets.PutInto(html, root, page);
        return page.Span.ToString();
    }

    static string[] NamesOf(string script) => [.. Theme(script).Files.Select(f => f.Address)];

    static AssetNames Theme(string script) => new(new ThemeFiles(new Dictionary<string, byte[]>
    {
        ["script/load.js"] = "load"u8.ToArray(),
        ["script/part.js"] = Encoding.UTF8.GetBytes(script),
        ["style/look.css"] = "p{}"u8.ToArray(),
    }));

    [GeneratedRegex("[.]([0-9a-f]{8})[.]")]
    private static partial Regex Name();
}
