using System.Security.Cryptography;
using System.Text;
using AngleSharp;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using GuideGen.Site.Planning;
using GuideGen.Site.Publishing;

namespace GuideGen.Site.Bundling;

/// <summary>
/// Joins the pages of a site into one: each becomes an article, links between pages become links within the page, styles
/// and pictures move in. Nothing is loaded and no script runs, which its own content security policy states.
/// </summary>
static class SinglePageSite
{
    public const string Mark = "<meta name=\"generator\" content=\"GuideGen, one file\">";

    /// <summary>Pages that live by script, or lead nowhere in one page.</summary>
    static readonly string[] LeftOut = [Addresses.NotFound, Addresses.Report];

    /// <summary>What only works with script, or only on a host.</summary>
    const string Lifeless = "script, form, button, [hidden], link, meta[http-equiv], meta[property]";

    /// <summary>Everything that pages are drawn from; lists of all standard codes would make the file ten times as large.</summary>
    public static bool Needs(string address) =>
        IsPage(address) || address.EndsWith(".css", StringComparison.Ordinal) || address.StartsWith("images/", StringComparison.Ordinal);

    public static string Make(IReadOnlyDictionary<string, byte[]> site)
    {
        var parser = new HtmlParser();
        var pages = site.Keys.Where(IsPage)
            .Select(a => (Address: a, Document: parser.ParseDocument(Encoding.UTF8.GetString(site[a]))))
            .Where(p => p.Document.QuerySelector("meta[http-equiv=refresh]") is null)
            .OrderBy(p => p.Address != Addresses.Home).ThenBy(p => p.Address, StringComparer.Ordinal).ToList();
        var addresses = pages.Select(p => p.Address).ToHashSet(StringComparer.Ordinal);
        var style = string.Concat(pages.SelectMany(p => StylesOf(p.Document)).Concat(site.Keys.Where(IsJoining)).Distinct().Select(a => Encoding.UTF8.GetString(site[a])));
        var home = pages[0].Document;
        var articles = pages.ConvertAll(p => ArticleOf(p.Document, new InnerLinks(p.Address, addresses, site)));
        Settle(home, new InnerLinks(Addresses.Home, addresses, site));
        var main = home.QuerySelector("main")!;
        main.InnerHtml = "";
        foreach (var article in articles) main.AppendChild(home.Import(article));
        WriteHead(home, style);
        return home.ToHtml() + "\n";
    }

    static bool IsPage(string address) =>
        address.EndsWith(".html", StringComparison.Ordinal) && !LeftOut.Contains(address) && !IsCodeList(address);

    /// <summary>The style of a guide in one file, which no page has of its own.</summary>
    static bool IsJoining(string address) => address.StartsWith(AssetNames.Folder + "one-page.", StringComparison.Ordinal);

    static bool IsCodeList(string address) => address.StartsWith("codes/", StringComparison.Ordinal) && address.Length == "codes/p02.html".Length;

    /// <summary>From the site's root, in the order of the page.</summary>
    static IEnumerable<string> StylesOf(IHtmlDocument page) =>
        page.QuerySelectorAll("link[rel=stylesheet]").Select(l => l.GetAttribute("href")!).Select(h => h[h.IndexOf(AssetNames.Folder, StringComparison.Ordinal)..]);

    static IElement ArticleOf(IHtmlDocument page, InnerLinks links)
    {
        var main = page.QuerySelector("main")!;
        var article = page.CreateElement("section");
        article.Id = links.AnchorOfPage;
        article.ClassName = "one-page " + page.Body!.ClassName;
        foreach (var child in main.ChildNodes.ToList()) article.AppendChild(child);
        Settle(article, links);
        return article;
    }

    static void Settle(IParentNode part, InnerLinks links)
    {
        foreach (var element in part.QuerySelectorAll(Lifeless).ToList()) element.Remove();
        foreach (var element in part.QuerySelectorAll("*").ToList()) links.Apply(element);
    }

    static void WriteHead(IHtmlDocument page, string style)
    {
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        page.Head!.Insert(
            AdjacentPosition.AfterBegin,
            $"<meta charset=\"utf-8\"><meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-{hash}'; img-src data:; base-uri 'none'; form-action 'none'\">{Mark}");
        foreach (var second in page.Head!.QuerySelectorAll("meta[charset]").Skip(1).ToList()) second.Remove();
        var element = page.CreateElement("style");
        element.TextContent = style;
        page.Head.AppendChild(element);
    }
}
