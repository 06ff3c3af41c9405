using GuideGen.Site.Planning;
using GuideGen.Site.Views;
using Scriban.Runtime;

namespace GuideGen.Site.Publishing;

/// <summary>What the head of a page tells browsers, search engines and previews.</summary>
static class PageHead
{
    /// <summary>Adds to <c>page</c>: canonical, moved_to, feed, linked_data; each null where there is nothing to say.</summary>
    public static void AddTo(ScriptObject page, ViewContext view, PlannedPage planned)
    {
        var moved = planned as MovedPage;
        page["canonical"] = planned.Address == Addresses.NotFound ? null : PublicAddress.Of(view.Guide.Settings, moved is null ? planned.Address : Addresses.Of(moved.To));
        page["moved_to"] = moved is null ? null : view.Links.Of(moved.To);
        page["feed"] = view.Guide.HasFeed ? view.Links.Root + Feed.Address : null;
        page["linked_data"] = LinkedData.Of(view, planned);
        page["policy"] = Headers.PagePolicy;
    }
}
