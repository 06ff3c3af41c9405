using GuideGen.Site.Planning;

namespace GuideGen.Site.Views;

/// <summary>Where a reader can edit the file of a page, by the pattern of the guide's settings.</summary>
static class ImproveLink
{
    /// <returns>Null if the guide has no pattern, or no file of it stands behind the page.</returns>
    public static string? Of(ViewContext view, PlannedPage page)
    {
        var source = page switch
        {
            EntryPage entry => entry.Entry.Origin.Source.Path,
            CodeInfoPage { Own: { } own } => own.Origin.Source.Path,
            _ => null,
        };
        if (source is null || view.Guide.Settings.ImproveLink is not { } pattern) return null;
        return pattern.Value.Replace("{path}", string.Join('/', source.Split('/').Select(Uri.EscapeDataString)), StringComparison.Ordinal);
    }
}
