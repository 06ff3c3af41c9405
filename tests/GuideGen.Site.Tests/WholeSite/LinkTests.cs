using AngleSharp.Dom;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>Every link and every asset of a site is there, so that the site works from a file, a sub-folder or a root.</summary>
public sealed class LinkTests
{
    static readonly string[] Attributes = ["href", "src", "srcset", "poster", "data", "action"];

    public static TheoryData<string> All => [Guides.Small, Guides.Demo, Guides.Hostile, Guides.Published];

    [Theory, MemberData(nameof(All))]
    public void Every_link_and_asset_leads_to_a_file_and_every_fragment_to_an_id(string guide)
    {
        var site = CompiledSite.Of(guide);

        Assert.Empty(InnerLinks(site).Where(l => !Leads(site, l)).Select(l => $"{l.Page.Address}: {l.Written}"));
    }

    [Theory, MemberData(nameof(All))]
    public void Only_links_in_text_leave_the_site_and_they_say_so(string guide)
    {
        var outside = CompiledSite.Of(guide).Pages.Values.SelectMany(Links).Where(l => l.IsOutside);

        Assert.Empty(outside
            .Where(l => l.Element.LocalName != "link" || l.Element.GetAttribute("rel") != "canonical")
            .Where(l => l.Element.LocalName != "a" || l.Element.GetAttribute("rel") != "external noopener")
            .Select(l => $"{l.Page.Address}: {l.Written}"));
    }

    [Theory, MemberData(nameof(All))]
    public void Every_page_but_the_one_for_lost_visitors_is_reached_from_the_start_page(string guide)
    {
        var site = CompiledSite.Of(guide);
        var next = InnerLinks(site).Where(l => l.Element.LocalName == "a").ToLookup(l => l.Page.Address, l => l.Target!);
        var reached = new HashSet<string> { "index.html" };
        var open = new Queue<string>(reached);
        while (open.TryDequeue(out var address))
        {
            foreach (var to in next[address].Where(reached.Add)) open.Enqueue(to);
        }

        Assert.Equal(["404.html"], site.Pages.Keys.Except(reached).Where(a => site.Pages[a].Document.QuerySelector("meta[http-equiv=refresh]") is null));
    }

    static IEnumerable<Link> InnerLinks(CompiledSite site) => site.Pages.Values.SelectMany(Links).Where(l => !l.IsOutside);

    static IEnumerable<Link> Links(SitePage page) =>
        from element in page.Document.All
        from attribute in Attributes
        let written = element.GetAttribute(attribute)
        where written is not null
        select new Link(page, element, written);

    static bool Leads(CompiledSite site, Link link)
    {
        // A host shows the page for lost visitors at any depth: its links count from the root of the host.
        if (link.Page.Address == "404.html" && site.Guide.Settings.Base is { } root)
        {
            return link.Written.StartsWith('#') || (link.Written.StartsWith(root.Value.AbsolutePath, StringComparison.Ordinal) && site.Files.ContainsKey(link.Written[root.Value.AbsolutePath.Length..]));
        }

        if (link.Target is not { } address || !site.Files.ContainsKey(address)) return false;
        var isPage = address.EndsWith(".html", StringComparison.Ordinal);
        if (link.Fragment is not { } id) return isPage || link.Element.LocalName != "a";
        return isPage && site.Pages[address].Document.GetElementById(id) is not null;
    }

    sealed record Link(SitePage Page, IElement Element, string Written)
    {
        public bool IsOutside => Written.StartsWith("//", StringComparison.Ordinal) || Written.Split('/', '#', '?')[0].Contains(':', StringComparison.Ordinal);

        public string? Fragment => Written.Split('#', 2) is [_, var fragment] ? Uri.UnescapeDataString(fragment) : null;

        /// <summary>From the site's root, decoded; null if it is not relative or leaves the site.</summary>
        public string? Target
        {
            get
            {
                var path = Written.Split('#')[0];
                if (path.StartsWith('/') || path.Contains('?', StringComparison.Ordinal)) return null;
                if (path.Length == 0) return Page.Address;
                var parts = Page.Address.Split('/')[..^1].ToList();
                foreach (var part in path.Split('/'))
                {
                    if (part != "..") parts.Add(part);
                    else if (parts.Count == 0) return null;
                    else parts.RemoveAt(parts.Count - 1);
                }

                return Uri.UnescapeDataString(string.Join('/', parts));
            }
        }
    }
}
