using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>Owners' reports, as they are listed on the page of the fault they found.</summary>
static class CaseView
{
    public static ScriptArray Of(ViewContext view, IEnumerable<SolvedCase> cases) => [.. cases.Select(c => Of(view, c))];

    static ScriptObject Of(ViewContext view, SolvedCase solved) => new()
    {
        ["date"] = view.Date(solved.Date.Value),
        ["variant"] = view.VariantName(solved.Variant.Value),
        ["distance"] = view.Distance(solved.Distance.Value),
        ["level"] = EvidenceView.Key(view.Guide.Evidence.LevelOf(solved)),
        ["codes"] = new ScriptArray(solved.Codes.Select(c => view.Code(c.Key.Value))),
        ["changed"] = new ScriptArray(solved.Work.Changed.Select(c => c.Value)),
        ["tried"] = new ScriptArray(solved.Work.Tried.Select(t => t.What.Value)),
        ["note"] = solved.Note?.Value,
    };
}
