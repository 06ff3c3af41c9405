using System.Collections.Immutable;
using System.Xml;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Publishing;

/// <summary>The pages that were read through last, as an Atom feed (RFC 4287). Only for a guide that knows where it stands.</summary>
static class Feed
{
    public const string Address = "feed.xml";

    public const string MediaType = "application/atom+xml";

    const int MostEntries = 50;
    const string Space = "http://www.w3.org/2005/Atom";

    /// <summary>Null if there is nothing to tell, or nowhere to point to.</summary>
    public static SiteFile? Of(SitePlan plan) =>
        plan.HasFeed ? new SiteFile(Address, () => XmlText.Write(xml => Write(xml, plan, plan.Guide.Settings.Base!.Value.Value))) : null;

    /// <summary>Newest first; of one day, in the order of their addresses.</summary>
    static ImmutableArray<IGuideEntry> Newest(GuideContent guide) =>
    [
        .. guide.Entries.Where(e => PageFacts.ReviewedOf(e) is not null)
            .OrderByDescending(PageFacts.ReviewedOf).ThenBy(Addresses.Of, StringComparer.Ordinal).Take(MostEntries),
    ];

    static void Write(XmlWriter xml, SitePlan plan, Uri root)
    {
        var entries = Newest(plan.Guide);
        var title = plan.Guide.Settings.Title.Value;
        xml.WriteStartElement("feed", Space);
        xml.WriteAttributeString("xml", "lang", null, plan.Guide.Settings.Language.Value);
        Element(xml, "id", root.AbsoluteUri);
        Element(xml, "title", title);
        Element(xml, "subtitle", plan.Guide.Settings.Summary.Value);
        Element(xml, "updated", Moment(PageFacts.ReviewedOf(entries[0])!.Value));
        xml.WriteStartElement("author", Space);
        Element(xml, "name", title);
        xml.WriteEndElement();
        Link(xml, "self", PublicAddress.Of(root, Address));
        Link(xml, "alternate", root.AbsoluteUri);
        foreach (var entry in entries) Write(xml, entry, PublicAddress.Of(root, Addresses.Of(entry)));
        xml.WriteEndElement();
    }

    static void Write(XmlWriter xml, IGuideEntry entry, string address)
    {
        xml.WriteStartElement("entry", Space);
        Element(xml, "id", address);
        Element(xml, "title", entry.Name.Value);
        Element(xml, "updated", Moment(PageFacts.ReviewedOf(entry)!.Value));
        Link(xml, "alternate", address);
        Element(xml, "summary", entry.Summary.Value);
        xml.WriteEndElement();
    }

    static void Element(XmlWriter xml, string name, string text) => xml.WriteElementString(name, Space, text);

    static void Link(XmlWriter xml, string relation, string address)
    {
        xml.WriteStartElement("link", Space);
        xml.WriteAttributeString("rel", relation);
        xml.WriteAttributeString("href", address);
        xml.WriteEndElement();
    }

    /// <summary>Authors state days; RFC 3339 wants a moment.</summary>
    static string Moment(DateOnly day) => PageFacts.Iso(day) + "T00:00:00Z";
}
