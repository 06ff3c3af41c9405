using System.Text.Json;
using System.Xml.Linq;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Publishing;

/// <summary>What a site carries once it knows where it stands, and what it leaves out while it does not.</summary>
public sealed class PublishTests
{
    const string Base = "https://club.example/loris/guide/";

    static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";
    static readonly XNamespace Sitemaps = "http://www.sitemaps.org/schemas/sitemap/0.9";

    static readonly CompiledSite Site = CompiledSite.Of(Guides.Published);

    [Theory]
    [InlineData("index.html", Base)]
    [InlineData("parts/charge-air-hose.html", Base + "parts/charge-air-hose.html")]
    [InlineData("parts/boost-hose.html", Base + "parts/charge-air-hose.html")]
    public void Every_page_says_its_canonical_address(string address, string expected)
    {
        var page = Site.Pages[address].Document;

        Assert.Equal(expected, page.QuerySelector("link[rel=canonical]")!.GetAttribute("href"));
        Assert.Equal(expected, page.QuerySelector("meta[property='og:url']")!.GetAttribute("content"));
    }

    [Fact]
    public void Without_a_base_nothing_claims_an_address()
    {
        var site = CompiledSite.Of(Guides.Small);

        Assert.DoesNotContain(site.Files.Keys, f => f is "sitemap.xml" or "feed.xml");
        Assert.All(site.Pages.Values, p => Assert.Null(p.Document.QuerySelector("link[rel=canonical], meta[property], script[type]")));
        Assert.Equal("User-agent: *\nAllow: /\n", site.Text("robots.txt"));
    }

    // sitemaps.org protocol 0.9: one loc a url, absolute, lastmod as a W3C date.
    [Fact]
    public void The_sitemap_lists_every_page_that_is_worth_finding()
    {
        var map = XDocument.Parse(Site.Text("sitemap.xml"));
        var expected = Site.Pages.Values
            .Where(p => p.Address != "404.html" && p.Document.QuerySelector("meta[http-equiv=refresh]") is null)
            .Select(p => p.Document.QuerySelector("link[rel=canonical]")!.GetAttribute("href"));

        Assert.Equal(Sitemaps + "urlset", map.Root!.Name);
        Assert.Equal(expected.Order(StringComparer.Ordinal), map.Descendants(Sitemaps + "loc").Select(l => l.Value).Order(StringComparer.Ordinal));
        Assert.Equal(["2026-04-18", "2026-05-02", "2026-06-09", "2026-07-01"], map.Descendants(Sitemaps + "lastmod").Select(l => l.Value));
        Assert.Contains($"\nSitemap: {Base}sitemap.xml\n", Site.Text("robots.txt"), StringComparison.Ordinal);
    }

    // RFC 4287, sections 4.1.1 and 4.1.2: what a feed and an entry must have.
    [Fact]
    public void The_feed_tells_what_was_read_through_last()
    {
        var feed = XDocument.Parse(Site.Text("feed.xml")).Root!;
        var entries = feed.Elements(Atom + "entry").ToList();

        Assert.Equal(Atom + "feed", feed.Name);
        Assert.Equal("2026-07-01T00:00:00Z", feed.Element(Atom + "updated")!.Value);
        Assert.Equal(Base, feed.Element(Atom + "id")!.Value);
        Assert.NotNull(feed.Element(Atom + "author")?.Element(Atom + "name"));
        Assert.Equal(Base + "feed.xml", feed.Elements(Atom + "link").Single(l => (string?)l.Attribute("rel") == "self").Attribute("href")!.Value);
        Assert.Equal(["tasks/read-codes.html", "parts/charge-air-hose.html", "faults/charge-air-hose-split.html", "checks/pressure-test.html"], entries.Select(e => e.Element(Atom + "id")!.Value[Base.Length..]));
        Assert.All(entries, e => Assert.All(["title", "updated", "summary"], name => Assert.NotEmpty(e.Element(Atom + name)!.Value)));
        Assert.Equal("feed.xml", Site.Pages["index.html"].Document.QuerySelector("link[type='application/atom+xml']")!.GetAttribute("href"));
    }

    [Theory]
    [InlineData("index.html", "WebSite", Base)]
    [InlineData("parts/charge-air-hose.html", "TechArticle", Base + "parts/charge-air-hose.html")]
    [InlineData("terms.html", "DefinedTermSet", Base + "terms.html")]
    public void What_a_page_is_stands_in_a_block_of_linked_data(string address, string type, string id)
    {
        var data = JsonDocument.Parse(Site.Pages[address].Document.QuerySelector("script[type='application/ld+json']")!.TextContent).RootElement;

        Assert.Equal("https://schema.org", data.GetProperty("@context").GetString());
        Assert.Equal((type, id), (data.GetProperty("@type").GetString(), data.GetProperty("@id").GetString()));
    }

    [Fact]
    public void An_old_address_leads_on_and_is_not_offered()
    {
        Assert.All(["parts/boost-hose.html", "parts/big-pipe.html"], old =>
        {
            var page = Site.Pages[old].Document;
            Assert.Equal("0; url=charge-air-hose.html", page.QuerySelector("meta[http-equiv=refresh]")!.GetAttribute("content"));
            Assert.Equal("charge-air-hose.html", page.QuerySelector("main a")!.GetAttribute("href"));
            Assert.Equal("noindex", page.QuerySelector("meta[name=robots]")!.GetAttribute("content"));
            Assert.DoesNotContain(old, Site.Text("guide.json"), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Guide_json_names_every_page_and_what_shows_what()
    {
        var json = JsonDocument.Parse(Site.Text("guide.json")).RootElement;
        var fault = json.GetProperty("faults").EnumerateArray().Single(f => f.GetProperty("key").GetString() == "charge-air-hose-split");

        Assert.All(json.GetProperty("pages").EnumerateArray(), p => Assert.Contains(p.GetProperty("address").GetString()!, Site.Files.Keys));
        Assert.All(json.GetProperty("codes").EnumerateArray(), c => Assert.Contains(c.GetProperty("address").GetString()!, Site.Files.Keys));
        Assert.Equal(0.75, fault.GetProperty("codes").GetProperty("P0299").GetDouble());
        Assert.Equal(Base, json.GetProperty("base").GetString());
    }

    [Fact]
    public void The_headers_file_counts_from_the_root_of_the_host_and_keeps_the_policy_of_the_pages()
    {
        var lines = Site.Text("_headers").Split('\n');
        var policy = Site.Pages["index.html"].Document.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content");

        Assert.Equal(["/loris/guide/*", "/loris/guide/assets/*"], lines.Where(l => l.StartsWith('/')));
        Assert.Contains($"  Content-Security-Policy: {policy}; frame-ancestors 'none'", lines);
        Assert.DoesNotContain("unsafe", policy!, StringComparison.Ordinal);
    }
}
