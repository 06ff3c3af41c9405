using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>
/// A hands-on page has a Safety section with text before the first hands-on section (ANSI Z535.6: a message
/// stands before the step it belongs to), and the section names every hazard that the page declares.
/// </summary>
sealed class SafetyInspection : IPageInspection
{
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide) => entry => entry is IHandsOnPage page ? Inspect(guide, page) : [];

    static IEnumerable<Finding> Inspect(GuideContent guide, IHandsOnPage page)
    {
        var body = page.Origin.Body;
        if (body.Find(SectionPlan.Safety) is not { } safety)
        {
            var (place, title, advice) = SectionGap.Of(page.Origin, SectionPlan.Safety);
            return [Rules.SafetyMissing.At(place, title, advice)];
        }

        if (body.IsEmpty(safety)) return [Rules.SafetyEmpty.At(safety.Title.Span, safety.Title.Value)];
        var handsOn = HandsOnSections(page).MinBy(s => s.Start);
        var late = handsOn is not null && handsOn.Start < safety.Start
            ? new[] { Rules.SafetyLate.At(safety.Title.Span, safety.Title.Value, handsOn.Title.Value) }
            : [];
        var words = Words.In(page.Origin.Source.Text, [.. body.RunsOf(safety)]);
        return [.. late, .. page.Hazards.SelectMany(h => Unmet(guide, PlacedIn(safety, h), words))];
    }

    /// <summary>In a translation the section is at fault, not the original that declares the hazard.</summary>
    static Located<string> PlacedIn(Section safety, Located<string> hazard) =>
        hazard.Span.Path == safety.Title.Span.Path ? hazard : hazard with { Span = safety.Title.Span };

    static IEnumerable<Finding> Unmet(GuideContent guide, Located<string> declared, List<Word> words)
    {
        // An unknown hazard has its own finding.
        if (!guide.Hazards.TryGetValue(declared.Value, out var hazard)) return [];
        var finder = new PhraseFinder<string>(hazard.MetBy.Select(m => (m.Value, m.Value)));
        if (finder.Find(words).Any()) return [];
        var finding = Rules.HazardUnmet.At(declared.Span, declared.Value, WaysToName(hazard)).Concerning(declared.Value);
        return [Weigh(finding, hazard)];
    }

    internal static string WaysToName(Hazard hazard) => string.Join(", ", hazard.MetBy.Select(m => m.Value));

    internal static IEnumerable<Section> HandsOnSections(IHandsOnPage page) =>
        SectionPlan.Of(page.Origin.Kind!.Value).Where(s => s.IsHandsOn).SelectMany(s => page.Origin.Body.FindAll(s.Title));

    /// <summary>What concerns a grave hazard is an error: the compile stops.</summary>
    internal static Finding Weigh(Finding finding, Hazard hazard) => hazard.IsGrave && finding.Rule.IsErrorIfGrave ? finding.Weighing(Severity.Error) : finding;
}
