using System.Globalization;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Publishing;

/// <summary>What is known of a page beside its text.</summary>
static class PageFacts
{
    /// <summary>The day on which somebody who knows last read it through.</summary>
    public static DateOnly? ReviewedOf(PlannedPage page) => page is EntryPage entry ? ReviewedOf(entry.Entry) : null;

    public static DateOnly? ReviewedOf(IGuideEntry entry) => Provenances.Of(entry).Reviewed?.Value;

    public static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
