using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Writing;

public sealed class SitePlaceTests : IDisposable
{
    readonly TempFolder temp = new();

    public SitePlaceTests()
    {
        temp.Write("guides/loris/site-config.yml", "");
        temp.Write("guides/loris/content/vehicle.yml", "");
        temp.Write("guides/other/site-config.yml", "");
        temp.Write("guides/file", "");
    }

    public void Dispose() => temp.Dispose();

    [Theory]
    [InlineData("guides/loris", "it is the guide's own folder")]
    [InlineData("guides", "the guide lies in it")]
    [InlineData("", "the guide lies in it")]
    [InlineData("guides/loris/content", "it lies in the guide's content")]
    [InlineData("guides/loris/content/out", "it lies in the guide's content")]
    [InlineData("guides/other", "it has a site-config.yml, so it is a guide itself")]
    [InlineData("guides/file", "it is a file")]
    public void A_site_does_not_go_over_a_guide(string wanted, string why)
    {
        var refusal = Assert.Throws<SiteRefusedException>(() => Choose(wanted));

        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_site_does_not_go_into_the_root_of_a_volume() =>
        Assert.Throws<SiteRefusedException>(() => SitePlace.Choose(temp.PathTo("guides", "loris"), Path.GetPathRoot(temp.PathTo())!));

    [Theory]
    [InlineData("guides/loris/out")]
    [InlineData("guides/loris-out")]
    [InlineData("guides/loris/contents")]
    [InlineData("elsewhere/a/b")]
    public void A_site_goes_anywhere_else(string wanted) => Assert.Equal(RealPath.Of(temp.PathTo(wanted)), Choose(wanted));

    [Theory]
    [InlineData("guides/loris")]
    [InlineData("guides/loris/content")]
    public void A_link_does_not_lead_around_the_refusal(string behind)
    {
        Directory.CreateSymbolicLink(temp.PathTo("link"), temp.PathTo(behind));

        Assert.Throws<SiteRefusedException>(() => Choose("link"));
    }

    [Fact]
    public void A_link_to_the_sites_folder_stays_a_link()
    {
        Directory.CreateDirectory(temp.PathTo("served", "site"));
        Directory.CreateSymbolicLink(temp.PathTo("out"), Path.Combine("served", "site"));

        new FolderTarget(Choose("out"), 1).Write([SiteFolder.File("index.html", "one")]);
        new FolderTarget(Choose("out"), 1).Write([SiteFolder.File("index.html", "two")]);

        Assert.NotNull(new DirectoryInfo(temp.PathTo("out")).LinkTarget);
        Assert.Equal("two", File.ReadAllText(temp.PathTo("served", "site", "index.html")));
    }

    string Choose(string wanted) => SitePlace.Choose(temp.PathTo("guides", "loris"), temp.PathTo(wanted));
}
