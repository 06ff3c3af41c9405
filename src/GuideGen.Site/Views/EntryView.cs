using GuideGen.Guide.Inspection;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Site.Rendering;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>What every page of an entry shows.</summary>
static class EntryView
{
    public static ScriptObject Of(ViewContext view, IGuideEntry entry) => new()
    {
        ["name"] = entry.Name.Value,
        ["summary"] = entry.Summary.Value,
        ["variants"] = view.Variants(entry),
        ["sections"] = Sections(entry, view),
        ["review"] = Review(view, Provenances.Of(entry)),
        ["sources"] = new ScriptArray(Provenances.Of(entry).Sources.Select(s => s.Value)),
    };

    /// <summary>When the page was last read through, by whom, and on which variants, as far as it says so.</summary>
    static string? Review(ViewContext view, Provenance provenance)
    {
        if (provenance.Reviewed is not { } day) return null;
        var on = string.Join(", ", provenance.ReviewedOn.Select(v => view.Guide.Vehicle.Variants.First(k => k.Key.Value == v.Value).Value.Name.Value));
        return string.Concat(
            view.Fill("review.day", view.Date(day.Value)),
            provenance.ReviewedBy is { } by ? view.Fill("review.by", by.Value) : "",
            on.Length > 0 ? view.Fill("review.on", on) : "");
    }

    public static ScriptObject HandsOn(ViewContext view, IHandsOnPage page)
    {
        var model = Of(view, page);
        model["cautions"] = CautionView.Of(view, page.Hazards);
        model["tools"] = new ScriptArray(page.Tools.Select(t => t.Value));
        return model;
    }

    static ScriptArray Sections(IGuideEntry entry, ViewContext view)
    {
        var plan = SectionPlan.Of(entry.Origin.Kind!.Value);
        var language = entry.Origin.Body.Language;
        return [.. BodyRenderer.Draw(entry, view.Links, view.Guide.TermFinder).Select(s => Section(s))];

        ScriptObject Section(DrawnSection section) => new()
        {
            ["title"] = section.Title,
            ["anchor"] = section.Anchor,
            ["html"] = section.Html,
            ["is_safety"] = section.Title == SectionTitles.In(language, SectionPlan.Safety),
            ["is_hands_on"] = plan.Any(p => p.IsHandsOn && SectionTitles.In(language, p.Title) == section.Title),
        };
    }
}
