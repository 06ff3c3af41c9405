using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class CheckView
{
    public static ScriptObject Of(ViewContext view, Check check)
    {
        var relations = view.Guide.Relations;
        var model = EntryView.HandsOn(view, check);
        model["cautions"] = CautionView.Of(view, check);
        model["minutes"] = view.Minutes(check.Minutes.Value);
        model["money"] = check.Money is { } money ? view.Money(new MoneyRange((decimal)money.Value, (decimal)money.Value)) : null;
        model["setup"] = new ScriptArray(check.Setup.Select(s => Setup(view, view.Setup(s))));
        model["parts"] = view.Cards(check.Parts.Select(p => view.Guide.Parts.Find(p.Value)!));
        model["outcomes"] = new ScriptArray(check.Outcomes.Select(o => Outcome(view, o.Key.Value, o.Value)));
        model["readings"] = new ScriptArray(check.Readings.Select((r, i) => ReadingView.Of(view, r, i + 1)));
        model["faults"] = view.Cards(relations.FaultsByCheck(check.Origin.Slug));
        model["trees"] = view.Cards(relations.TreesByCheck(check.Origin.Slug));
        return model;
    }

    static ScriptObject Outcome(ViewContext view, string slug, Outcome outcome) => new()
    {
        ["slug"] = slug,
        ["name"] = outcome.Name.Value,
        ["points_to"] = view.Cards(outcome.PointsTo.Select(f => view.Guide.Faults.Find(f.Value)!)),
        ["rules_out"] = view.Cards(outcome.RulesOut.Select(f => view.Guide.Faults.Find(f.Value)!)),
    };

    static ScriptObject Setup(ViewContext view, Setup setup) => new() { ["name"] = setup.Name.Value, ["minutes"] = view.Minutes(setup.Minutes.Value) };
}
