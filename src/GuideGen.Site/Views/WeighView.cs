using System.Text.RegularExpressions;
using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The page that weighs the causes: what can be answered on it. The weighing itself is the script's.</summary>
static partial class WeighView
{
    public static ScriptObject Of(ViewContext view) => new()
    {
        ["name"] = view.Words["weigh.title"],
        ["summary"] = view.Words["weigh.summary"],
        ["variants"] = new ScriptArray(view.Guide.Vehicle.Variants.Select(v => Choice(v.Key.Value, v.Value.Name.Value))),
        ["senses"] = new ScriptArray(Enum.GetValues<Sense>().Select(s => BySense(view, s)).Where(g => ((ScriptArray)g["symptoms"]!).Count > 0)),
        ["tools"] = new ScriptArray(view.Guide.Checks.All.SelectMany(c => c.Tools).Select(t => t.Value).Distinct().Order(StringComparer.InvariantCultureIgnoreCase).Select(t => Choice(SlugOf(t), t))),
        ["setups"] = new ScriptArray(view.Guide.Vehicle.Setups.Select(s => Choice(s.Key.Value, s.Value.Name.Value))),
        ["distance_unit"] = view.Guide.Vehicle.DistanceUnit.Value,
    };

    static ScriptObject BySense(ViewContext view, Sense sense) => new()
    {
        ["sense"] = SymptomView.Key(sense),
        ["symptoms"] = new ScriptArray(view.Guide.Symptoms.All.Where(s => s.Sense.Value == sense).Select(s => Symptom(view, s))),
    };

    static ScriptObject Symptom(ViewContext view, Symptom symptom)
    {
        var choice = Choice(symptom.Origin.Slug, symptom.Name.Value);
        choice["summary"] = symptom.Summary.Value;
        choice["href"] = view.Links.Of(symptom);
        return choice;
    }

    /// <summary>A tool as the address of the page names it.</summary>
    static string SlugOf(string tool) => NotInSlug().Replace(tool.ToLowerInvariant(), "-").Trim('-');

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotInSlug();

    static ScriptObject Choice(string slug, string name) => new() { ["slug"] = slug, ["name"] = name };
}
