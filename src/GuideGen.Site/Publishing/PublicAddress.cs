using GuideGen.Guide.Model;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Publishing;

/// <summary>Where a page stands in the world, for what must not be relative: search engines, feeds and previews.</summary>
static class PublicAddress
{
    /// <summary>The canonical address of a page; the start page is the folder itself.</summary>
    /// <param name="address">Relative to the site's root.</param>
    /// <returns>Null if the guide does not say where it stands.</returns>
    public static string? Of(SiteSettings settings, string address) => settings.Base is { } root ? Of(root.Value, address) : null;

    public static string Of(Uri root, string address) =>
        root.AbsoluteUri + (address == Addresses.Home ? "" : string.Join('/', address.Split('/').Select(Uri.EscapeDataString)));

    /// <summary>The way from a page to the site's root: empty, or a number of <c>../</c>.</summary>
    /// <remarks>A host shows the page for lost visitors at any depth, so that nothing relative holds on it once the base is known.</remarks>
    public static string RootFrom(SiteSettings settings, string address) =>
        address == Addresses.NotFound && settings.Base is { } root
            ? root.Value.AbsolutePath
            : string.Concat(Enumerable.Repeat("../", address.Count(c => c == '/')));
}
