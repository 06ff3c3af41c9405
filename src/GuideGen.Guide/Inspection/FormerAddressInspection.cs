using GuideGen.Guide.Findings;
using GuideGen.Guide.Links;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Old addresses can be addresses, and each leads to one page.</summary>
sealed class FormerAddressInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var taken = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (kind, slugs) in guide.Slugs.Where(s => FormerAddress.Kinds.Contains(s.Key)))
        {
            foreach (var slug in slugs) taken[FormerAddress.Of(kind, slug)] = $"content/{NameKinds.Folder(kind)}/{slug}{NameKinds.Ending(kind)}";
        }

        return [.. from e in guide.Entries from f in Provenances.Of(e).Formerly let finding = Inspect(e, f, taken) where finding is not null select finding];
    }

    static Finding? Inspect(IGuideEntry entry, Located<string> former, Dictionary<string, string> taken)
    {
        var (written, span) = former;
        if (!FormerAddress.IsGood(written)) return Rules.FormerForm.At(span, written);
        return taken.TryAdd(written, $"an old address of {entry.Origin.Source.Path}") ? null : Rules.FormerTaken.At(span, written, taken[written]);
    }
}
