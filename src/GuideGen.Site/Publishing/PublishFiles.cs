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
        Headers.Of(plan.Guide),
    ];
}
