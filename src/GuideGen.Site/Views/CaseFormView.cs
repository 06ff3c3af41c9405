using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The page on which an owner writes a case down. The file is made by the script, on the owner's device.</summary>
static class CaseFormView
{
    public static ScriptObject Of(ViewContext view)
    {
        var model = WeighView.Of(view);
        model["name"] = view.Words["case-form.title"];
        model["summary"] = view.Words["case-form.summary"];
        model["currency"] = view.Guide.Vehicle.Currency.Value;
        model["systems"] = new ScriptArray(view.Guide.Vehicle.Systems.Select(s => new ScriptObject
        {
            ["name"] = s.Value.Value,
            ["faults"] = new ScriptArray(view.Guide.Faults.All.Where(f => f.System.Value == s.Key.Value).Select(f => new ScriptObject { ["slug"] = f.Origin.Slug, ["name"] = f.Name.Value })),
        }));
        return model;
    }
}
