using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Where a missing section belongs, and what to write there.</summary>
/// <param name="Place">The heading that was likely meant for it; otherwise the one before which it belongs, or the end of the page.</param>
/// <param name="Advice">A whole sentence.</param>
sealed record SectionGap(SourceSpan Place, string Advice)
{
    public static SectionGap Of(PageOrigin page, string title)
    {
        var plan = SectionPlan.Of(page.Kind!.Value).Select(s => s.Title).ToList();
        if (Meant(page.Body, plan, title) is { } meant)
        {
            return new SectionGap(meant.Text.Span, $"Write '## {title}' in place of '{new string('#', meant.Level)} {meant.Text.Value}'.");
        }

        var next = plan.SkipWhile(t => t != title).Skip(1).Select(page.Body.Find).FirstOrDefault(s => s is not null);
        return next is null
            ? new SectionGap(page.Source.Bottom, $"Add '## {title}' at the end.")
            : new SectionGap(next.Title.Span, $"Add '## {title}' before '## {next.Title.Value}'.");
    }

    static Heading? Meant(PageBody body, List<string> plan, string title)
    {
        var free = body.Headings.Where(h => h.Level != 2 || !plan.Contains(h.Text.Value, StringComparer.OrdinalIgnoreCase)).ToList();
        var name = NearestName.To(title, free.Select(h => h.Text.Value));
        return free.FirstOrDefault(h => h.Text.Value == name);
    }
}
