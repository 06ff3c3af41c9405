using GuideGen.Guide.Findings;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The rule book as a page, from the same explanations that the command line shows.</summary>
static class RulesView
{
    public static ScriptObject Of(ViewContext view) => new()
    {
        ["name"] = view.Words["rules.title"],
        ["summary"] = view.Words["rules.summary"],
        ["groups"] = new ScriptArray(Rules.All.GroupBy(r => RuleExplanations.All[r.Id].Group).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => new ScriptObject
        {
            ["title"] = g.Key,
            ["anchor"] = "_" + Guide.Pages.Anchors.Of(g.Key),
            ["rules"] = new ScriptArray(g.Select(Rule)),
        })),
    };

    static ScriptObject Rule(Rule rule)
    {
        var explanation = RuleExplanations.All[rule.Id];
        return new ScriptObject
        {
            ["id"] = rule.Id,
            ["title"] = rule.Title,
            ["severity"] = SeverityWords.Key(rule.Severity),
            ["is_error_if_grave"] = rule.IsErrorIfGrave,
            ["can_be_dismissed"] = rule.CanBeDismissed,
            ["why"] = explanation.Why,
            ["bad"] = new ScriptArray(explanation.Bad.Select(Example)),
            ["good"] = new ScriptArray(explanation.Good.Select(Example)),
        };
    }

    static ScriptObject Example(RuleExample example) => new() { ["path"] = example.Path, ["text"] = example.Shown };
}
