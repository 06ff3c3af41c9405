using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Links;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pictures;
using GuideGen.Site.Asking;
using GuideGen.Site.Pictures;
using GuideGen.Site.Planning;
using GuideGen.Site.Publishing;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Views;

/// <summary>Where things are, seen from one page. Which pages there are is known without asking, see <see cref="SitePlan.Common"/>; what stands in them is not.</summary>
public sealed class PageLinks
{
    readonly SitePlan plan;
    readonly string from;
    readonly AskedItems? asked;

    internal PageLinks(SitePlan plan, string from, AskedItems? asked)
    {
        (this.plan, this.from, this.asked) = (plan, from, asked);
        Root = PublicAddress.RootFrom(plan.Guide.Settings, from);
        Cleaner = plan.Cleaner;
    }

    /// <inheritdoc cref="PublicAddress.RootFrom"/>
    public string Root { get; }

    /// <summary>For a guide that allows some HTML in its pages; null for all others.</summary>
    internal HtmlCleaner? Cleaner { get; }

    public string To(string address) => from == Addresses.NotFound ? Root + address : Addresses.Relative(from, address);

    public string Of(IGuideEntry entry) => To(Addresses.Of(entry));

    /// <returns>Null if the site has no page for the code.</returns>
    public string? Of(TroubleCode code) => plan.CodeSet.Contains(code) ? To(Addresses.Of(code)) : null;

    /// <summary>The code's own page, or its row among all standard codes.</summary>
    /// <returns>Null for a code that neither the guide nor the standard knows.</returns>
    public string? ToCode(TroubleCode code) =>
        Of(code) ?? (CodeCatalogue.FindStandard(code) is null ? null : $"{To(Addresses.OfGroup(CodeGroup.NameOf(code)))}#{Addresses.AnchorOf(code)}");

    /// <summary>How large a picture is shown, and where its sizes are.</summary>
    /// <returns>Null for what is no picture of this guide.</returns>
    internal (Picture Picture, ImmutableArray<(string Address, PhotoSize Size)> Sizes)? PictureOf(IGuideEntry entry, string written) =>
        plan.Links.Resolve(entry.Origin.Path, written) is AssetTarget asset && plan.Guide.Pictures.TryGetValue(asset.Path, out var picture)
            ? (picture, [.. PhotoSizes.Of(plan.Guide, asset.Path).Select(s => (ToAsset(s.Address), s))])
            : null;

    string ToAsset(string path) => To(string.Join('/', path.Split('/').Select(Uri.EscapeDataString)));

    /// <summary>The address for a link that an author wrote. The inspection has found it good.</summary>
    public string AddressOf(IGuideEntry entry, string written) => plan.Links.Resolve(entry.Origin.Path, written) switch
    {
        EntryTarget { Anchor: "" } to => Of(to.Entry),
        // A translation has headings of its own.
        EntryTarget to when !HasAnchor(to.Entry, to.Anchor) => Of(to.Entry),
        EntryTarget to when to.Entry == entry => "#" + to.Anchor,
        EntryTarget to => $"{Of(to.Entry)}#{to.Anchor}",
        AssetTarget asset => ToAsset(asset.Path),
        OutsideTarget outside => outside.Address,
        _ => throw new InvalidOperationException($"the link '{written}' of {entry.Origin.Source.Path} passed the inspection but leads nowhere"),
    };

    bool HasAnchor(IGuideEntry entry, string anchor)
    {
        asked?.Note(GuideItem.Of(entry));
        return LinkTable.AnchorsOf(entry).Contains(anchor);
    }
}
