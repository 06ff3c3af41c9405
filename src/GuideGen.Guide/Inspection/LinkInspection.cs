using GuideGen.Guide.Findings;
using GuideGen.Guide.Links;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;

namespace GuideGen.Guide.Inspection;

/// <summary>Links lead somewhere, pictures are there and have a text alternative. Links that leave the guide are only listed.</summary>
sealed class LinkInspection : IPageInspection
{
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide)
    {
        var table = new LinkTable(guide);
        return entry => entry.Origin.Body.Links.SelectMany(l => Inspect(guide, table, entry, l));
    }

    static IEnumerable<Finding> Inspect(GuideContent guide, LinkTable table, IGuideEntry entry, PageLink link)
    {
        var target = table.Resolve(entry.Origin.Path, link.Target.Value);
        var fault = link.IsPicture ? OfPicture(guide, link, target) : OfLink(table, entry, link, target);
        if (fault is not null) yield return fault.Concerning(link.Target.Value);
        if (link.IsPicture && string.IsNullOrWhiteSpace(link.Label.Value)) yield return Rules.ImageAlt.At(link.Label.Span, link.Target.Value);
    }

    static Finding? OfLink(LinkTable table, IGuideEntry entry, PageLink link, LinkTarget target)
    {
        var (written, span) = link.Target;
        return target switch
        {
            OutsideTarget => Rules.LinkOutside.At(span, written),
            ForbiddenTarget => Rules.LinkScheme.At(span, written),
            BrokenTarget broken => Rules.LinkBroken.At(span, written, broken.Why, Question(link, broken, table.Paths)),
            // The original's author cannot know a translation's headings; such a link leads to the whole page.
            EntryTarget { Entry.Origin.IsTranslated: true } when !entry.Origin.IsTranslated => null,
            EntryTarget { Anchor: not "" } to when !LinkTable.AnchorsOf(to.Entry).Contains(to.Anchor) =>
                Rules.AnchorMissing.At(span, to.Entry.Name.Value, to.Anchor, NearestName.Question(to.Anchor, LinkTable.AnchorsOf(to.Entry))),
            _ => null,
        };
    }

    static Finding? OfPicture(GuideContent guide, PageLink link, LinkTarget target)
    {
        var (written, span) = link.Target;
        return target switch
        {
            AssetTarget or UnreadTarget => null,
            OutsideTarget or ForbiddenTarget => Rules.LinkScheme.At(span, written),
            _ => Rules.ImageMissing.At(span, written, Question(link, target as BrokenTarget, guide.Assets.Select(LinkTable.PathOfAsset))),
        };
    }

    static string Question(PageLink link, BrokenTarget? broken, IEnumerable<string> paths) =>
        NearestName.To(broken?.Path ?? "", paths) is { } path ? $" Did you mean '{LinkTable.Between(link.Target.Span.Path, path)}'?" : "";
}
