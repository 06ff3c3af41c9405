using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class PartView
{
    public static ScriptObject Of(ViewContext view, Part part)
    {
        var relations = view.Guide.Relations;
        var model = EntryView.Of(view, part);
        model["system"] = view.SystemName(part.System);
        model["where"] = part.Where.Value;
        model["path"] = part.Path is { } path ? MapView.Key(path.Value) : null;
        model["also"] = new ScriptArray(part.Also.Select(a => a.Value));
        model["superseded_by"] = part.SupersededBy is { } newer ? view.Card(view.Guide.Parts.Find(newer.Value)!) : null;
        model["faults"] = view.Cards(relations.FaultsByPart(part.Origin.Slug));
        model["checks"] = view.Cards(relations.ChecksByPart(part.Origin.Slug));
        return model;
    }
}
