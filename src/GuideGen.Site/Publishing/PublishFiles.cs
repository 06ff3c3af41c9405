using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Publishing;

/// <summary>The files beside the pages with which a site can be put anywhere.</summary>
static class PublishFiles
{
    public static IEnumerable<SiteFile> Of(SitePlan plan) =>
    [
        .. Listings.Of(plan),
        .. Feed.Of(plan) is { } feed ? [feed] : Array.Empty<SiteFile>(),
        GuideJson.Of(plan),
        .. plan.Folder.Length == 0 ? ForHosts(plan) : [],
    ];

    /// <summary>What hosts and search engines read at the root of a site only.</summary>
    static IEnumerable<SiteFile> ForHosts(SitePlan plan) => [Listings.ForRobots(plan), Headers.Of(plan.Guide)];
}
