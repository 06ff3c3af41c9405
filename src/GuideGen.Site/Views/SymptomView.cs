using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class SymptomView
{
    public static ScriptObject Of(ViewContext view, Symptom symptom)
    {
        var relations = view.Guide.Relations;
        var model = EntryView.Of(view, symptom);
        model["slug"] = symptom.Origin.Slug;
        model["sense"] = Key(symptom.Sense.Value);
        model["lamp"] = symptom.Lamp?.Value;
        model["drive"] = DriveWords.Key(symptom.Drive.Value);
        model["also"] = new ScriptArray(symptom.Also.Select(a => a.Value));
        model["trees"] = view.Cards(relations.TreesBySymptom(symptom.Origin.Slug));
        model["faults"] = new ScriptArray(relations.FaultsBySymptom(symptom.Origin.Slug).Select(view.Card));
        model["evidence"] = EvidenceView.Of(view, view.Guide.Evidence.OfSymptom(symptom.Origin.Slug));
        return model;
    }

    public static string Key(Sense sense) => sense.ToString().ToLowerInvariant();
}
