using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Where a missing section belongs, and what to write there.</summary>
/// <param name="Place">The heading that was likely meant for it; otherwise the one before which it belongs, or the end of the page.</param>
/// <param name="Title">In the language of the page.</param>
/// <param name="Advice">A whole sentence.</param>
sealed record SectionGap(SourceSpan Place, string Title, string Advice)
{
    /// <param name="planned">Title of the section in the plan of sections.</param>
    public static SectionGap Of(PageOrigin page, string planned)
    {
        var body = page.Body;
        var plan = SectionPlan.Of(page.Kind!.Value).Select(s => s.Title).ToList();
        var title = SectionTitles.In(body.Language, planned);
        if (Meant(body, plan, title) is { } meant)
        {
            return new SectionGap(meant.Text.Span, title, $"Write '## {title}' in place of '{new string('#', meant.Level)} {meant.Text.Value}'.");
        }

        var next = plan.SkipWhile(t => t != planned).Skip(1).Select(body.Find).FirstOrDefault(s => s is not null);
        return next is null
            ? new SectionGap(page.Source.Bottom, title, $"Add '## {title}' at the end.")
            : new SectionGap(next.Title.Span, title, $"Add '## {title}' before '## {next.Title.Value}'.");
    }

    static Heading? Meant(PageBody body, List<string> plan, string title)
    {
        var taken = plan.Select(t => SectionTitles.In(body.Language, t)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var free = body.Headings.Where(h => h.Level != 2 || !taken.Contains(h.Text.Value)).ToList();
        var name = NearestName.To(title, free.Select(h => h.Text.Value));
        return free.FirstOrDefault(h => h.Text.Value == name);
    }
}
