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
    };

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
        return [.. BodyRenderer.Draw(entry, view.Links, view.Plan.Terms).Select(s => Section(s))];

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
