using System.Text;
using System.Xml;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Publishing;

/// <summary>What search engines read first: the list of pages (sitemaps.org protocol 0.9) and where it is (RFC 9309).</summary>
static class Listings
{
    const string Sitemap = "sitemap.xml";
    const string Robots = "robots.txt";
    const string SitemapSpace = "http://www.sitemaps.org/schemas/sitemap/0.9";

    public static IEnumerable<SiteFile> Of(SitePlan plan)
    {
        if (plan.Guide.Settings.Base is { } root) yield return new SiteFile(Sitemap, () => XmlText.Write(xml => WriteSitemap(xml, plan, root.Value)));
    }

    public static SiteFile ForRobots(SitePlan plan) => new(Robots, () => Encoding.UTF8.GetBytes(RobotsText(plan.Guide)));

    /// <summary>Pages that are worth finding: not the one for lost visitors, nor those that only lead on.</summary>
    public static IEnumerable<PlannedPage> Findable(SitePlan plan) => plan.Pages.Where(p => p is not MovedPage && p.Address != Addresses.NotFound);

    static string RobotsText(GuideContent guide) =>
        "User-agent: *\nAllow: /\n" + (guide.Settings.Base is null ? "" : "\n" + string.Concat(guide.Editions.Select(e => $"Sitemap: {PublicAddress.Of(guide.Settings, SitePlan.FolderOf(guide.Editions, e) + Sitemap)}\n")));

    static void WriteSitemap(XmlWriter xml, SitePlan plan, Uri root)
    {
        xml.WriteStartElement("urlset", SitemapSpace);
        foreach (var page in Findable(plan).OrderBy(p => p.Address, StringComparer.Ordinal))
        {
            xml.WriteStartElement("url", SitemapSpace);
            xml.WriteElementString("loc", SitemapSpace, PublicAddress.Of(root, page.Address));
            if (PageFacts.ReviewedOf(page) is { } day) xml.WriteElementString("lastmod", SitemapSpace, PageFacts.Iso(day));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }
}
