using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>Hazards as boxes: gravest first, as ANSI Z535.6 groups them at the head of a section.</summary>
static class CautionView
{
    public static ScriptArray Of(ViewContext view, IEnumerable<Located<string>> hazards) =>
    [
        .. hazards.Select(h => h.Value).Distinct()
            .Select(slug => (slug, hazard: view.Guide.Hazards[slug]))
            .OrderBy(h => h.hazard.Signal.Value).ThenBy(h => h.slug, StringComparer.Ordinal)
            .Select(h => Box(view, h.slug, h.hazard)),
    ];

    /// <summary>The hazards of a check and of the preparation it needs, which is part of doing it.</summary>
    public static ScriptArray Of(ViewContext view, Check check) => Of(view, check.Hazards.Concat(check.Setup.SelectMany(s => view.Setup(s).Hazards)));

    static ScriptObject Box(ViewContext view, string slug, Hazard hazard) => new()
    {
        ["slug"] = slug,
        ["signal"] = SignalWords.Key(hazard.Signal.Value),
        ["name"] = hazard.Name.Value,
        ["cautions"] = new ScriptArray(hazard.Cautions.Select(c => c.Value)),
        ["hand_over"] = hazard.HandOver?.Value,
        ["href"] = view.Links.To(Planning.Addresses.Safety) + "#" + slug,
    };
}
