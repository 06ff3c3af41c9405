using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class TaskView
{
    public static ScriptObject Of(ViewContext view, HowTo task)
    {
        var model = EntryView.HandsOn(view, task);
        model["minutes"] = view.Minutes(task.Minutes.Value);
        model["parts"] = view.Cards(task.Parts.Select(p => view.Guide.Parts.Find(p.Value)!));
        return model;
    }
}
