using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Words in hands-on text that call for a hazard which the page does not declare: one finding per hazard, at the first such word.</summary>
sealed class HazardTextInspection : IPageInspection
{
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide)
    {
        var triggers = from h in guide.Hazards from t in h.Value.Triggers select (t.Value, h.Key);
        var finder = new PhraseFinder<string>(triggers);
        return entry => entry is IHandsOnPage page ? Inspect(guide, page, finder) : [];
    }

    static IEnumerable<Finding> Inspect(GuideContent guide, IHandsOnPage page, PhraseFinder<string> finder)
    {
        var body = page.Origin.Body;
        var words = SafetyInspection.HandsOnSections(page).SelectMany(s => Words.In(page.Origin.Source.Text, [.. body.RunsOf(s)])).ToList();
        var declared = page.Hazards.Concat(HazardsOfSetup(guide, page)).Select(h => h.Value).ToHashSet(StringComparer.Ordinal);
        return
            from found in finder.Find(words)
            where !declared.Contains(found.Tag)
            group found by found.Tag into same
            let first = same.MinBy(f => f.Start)
            let finding = Rules.HazardUndeclared.At(page.Origin.Source.Span(first.Start, first.Length), first.Phrase, same.Key, SafetyInspection.WaysToName(guide.Hazards[same.Key]))
            select SafetyInspection.Weigh(finding.Concerning(same.Key), guide.Hazards[same.Key]);
    }

    /// <summary>A shared preparation brings its own hazards: their cautions stand on the page of every check that needs it.</summary>
    static IEnumerable<Located<string>> HazardsOfSetup(GuideContent guide, IHandsOnPage page) => page is Check check
        ? from s in guide.Vehicle.Setups where check.Setup.Any(c => c.Value == s.Key.Value) from h in s.Value.Hazards select h
        : [];
}
