using GuideGen.Codes;
using GuideGen.Site.Planning;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The pages that leave no standard code without an answer: each group of codes, and what the conditions mean.</summary>
static class CodeGroupView
{
    public static ScriptObject Of(ViewContext view, CodeGroup group) => new()
    {
        ["name"] = view.Fill("code-group.title", group.Name),
        ["summary"] = view.Fill("code-group.summary", group.Name, group.Area.Name),
        ["block"] = group.Name,
        ["cautions"] = new ScriptArray(group.Rows.Select(r => r.Entry).OfType<CodeEntry>().SelectMany(e => e.Cautions.Except(e.Condition.Cautions)).Distinct()),
        ["rows"] = new ScriptArray(group.Rows.Select(r => Row(view, r))),
    };

    public static ScriptObject Conditions(ViewContext view) => new()
    {
        ["name"] = view.Words["conditions.title"],
        ["summary"] = view.Words["conditions.summary"],
        ["conditions"] = new ScriptArray(CodeCatalogue.Standard.Select(e => e.Condition).DistinctBy(c => c.Key).OrderBy(c => c.Words, StringComparer.Ordinal).Select(ConditionOf)),
    };

    public static ScriptObject ConditionOf(ConditionInfo condition) => new()
    {
        ["key"] = condition.Key,
        ["words"] = condition.Words,
        ["saw"] = condition.Saw,
        ["steps"] = new ScriptArray(condition.Steps),
        ["cautions"] = new ScriptArray(condition.Cautions),
    };

    static ScriptObject Row(ViewContext view, GroupRow row) => new()
    {
        ["code"] = row.Code.ToString(),
        ["anchor"] = Addresses.AnchorOf(row.Code),
        ["href"] = row.HasPage ? view.Links.Of(row.Code) : null,
        ["meaning"] = CodeWords.MeaningOf(view, row.Code),
        ["condition"] = row.Entry?.Condition.Key,
        ["notes"] = new ScriptArray(row.Entry?.Notes ?? []),
    };
}
