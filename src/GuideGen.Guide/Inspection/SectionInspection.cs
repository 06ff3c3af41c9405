using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;

namespace GuideGen.Guide.Inspection;

/// <summary>Pages have the sections of their kind, with text, in the usual order. Safety has rules of its own.</summary>
sealed class SectionInspection : IPageInspection
{
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide) => Inspect;

    static IEnumerable<Finding> Inspect(IGuideEntry entry)
    {
        var body = entry.Origin.Body;
        var kind = entry.Origin.Kind!.Value;
        var plan = SectionPlan.Of(kind).Where(s => s.Title != SectionPlan.Safety).ToList();
        var titles = string.Join(", ", SectionPlan.Of(kind).Select(s => SectionTitles.In(body.Language, s.Title)));
        foreach (var heading in body.Headings.Where(h => h.Level == 1)) yield return Rules.HeadingLevel.At(heading.Text.Span, heading.Text.Value);
        foreach (var planned in plan.Where(p => body.Find(p.Title) is null))
        {
            var (place, title, advice) = SectionGap.Of(entry.Origin, planned.Title);
            yield return Rules.SectionMissing.At(place, title, NameKinds.Word(kind), titles, advice).Concerning(planned.Title);
        }

        var present = plan.Select(p => body.Find(p.Title)).OfType<Section>().ToList();
        foreach (var section in present.Where(body.IsEmpty)) yield return Rules.SectionEmpty.At(section.Title.Span, section.Title.Value);
        foreach (var (before, after) in present.Zip(present.Skip(1)).Where(p => p.First.Start > p.Second.Start))
        {
            yield return Rules.SectionOrder.At(before.Title.Span, before.Title.Value, after.Title.Value, titles);
        }
    }
}
