using System.Text;
using System.Text.Json;
using GuideGen.Site.Asking;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Views;

namespace GuideGen.Site.Publishing;

/// <summary>
/// What a page is, for machines (JSON-LD 1.1 with the vocabulary of schema.org), said only where it is true: the start page
/// is a web site about a vehicle, an entry is an article of it, the page of terms defines them.
/// </summary>
/// <remarks>
/// A data block in the page: browsers never execute it, so that the content security policy lets it stand (HTML Living
/// Standard, the script element). The JSON writer escapes every sign that could end it.
/// </remarks>
static class LinkedData
{
    /// <returns>Null for a page of which there is nothing to say, or if the guide does not know where it stands.</returns>
    public static HtmlText? Of(ViewContext view, PlannedPage page)
    {
        if (view.Guide.Settings.Base is not { } root) return null;
        Action<Utf8JsonWriter>? write = page switch
        {
            SinglePage { Address: Addresses.Home } => json => WriteSite(json, view.Guide, root.Value),
            EntryPage entry => json => WriteArticle(json, view.Guide, root.Value, entry),
            SinglePage { Address: Addresses.Terms } => json => WriteTerms(json, view, root.Value),
            _ => null,
        };
        return write is null ? null : new HtmlText($"<script type=\"application/ld+json\">{Block(write)}</script>");
    }

    static string Block(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("@context", "https://schema.org");
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    static void WriteSite(Utf8JsonWriter json, AskedGuide guide, Uri root)
    {
        WriteThing(json, "WebSite", guide.Settings.Title.Value, root.AbsoluteUri);
        json.WriteString("description", guide.Settings.Summary.Value);
        json.WriteString("inLanguage", guide.Settings.Language.Value);
        WriteVehicle(json, guide);
    }

    static void WriteArticle(Utf8JsonWriter json, AskedGuide guide, Uri root, EntryPage page)
    {
        WriteThing(json, "TechArticle", page.Entry.Name.Value, PublicAddress.Of(root, page.Address));
        json.WriteString("headline", page.Entry.Name.Value);
        json.WriteString("description", page.Entry.Summary.Value);
        json.WriteString("inLanguage", guide.Settings.Language.Value);
        if (PageFacts.ReviewedOf(page) is { } day) json.WriteString("dateModified", PageFacts.Iso(day));
        WriteVehicle(json, guide);
        json.WriteStartObject("isPartOf");
        WriteThing(json, "WebSite", guide.Settings.Title.Value, root.AbsoluteUri);
        json.WriteEndObject();
    }

    static void WriteTerms(Utf8JsonWriter json, ViewContext view, Uri root)
    {
        var address = PublicAddress.Of(root, Addresses.Terms);
        WriteThing(json, "DefinedTermSet", view.Words["terms.title"], address);
        json.WriteStartArray("hasDefinedTerm");
        foreach (var (word, term) in view.Guide.Terms)
        {
            json.WriteStartObject();
            WriteThing(json, "DefinedTerm", word.Value, $"{address}#{Guide.Pages.Anchors.Of(word.Value)}");
            json.WriteString("description", term.Means.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    static void WriteVehicle(Utf8JsonWriter json, AskedGuide guide)
    {
        json.WriteStartObject("about");
        json.WriteString("@type", "Vehicle");
        json.WriteString("name", guide.Vehicle.Name.Value);
        json.WriteEndObject();
    }

    static void WriteThing(Utf8JsonWriter json, string type, string name, string address)
    {
        json.WriteString("@type", type);
        json.WriteString("@id", address);
        json.WriteString("url", address);
        json.WriteString("name", name);
    }
}
