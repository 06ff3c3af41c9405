using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Takes out the findings that an author dismissed in writing, and looks at the dismissals themselves.</summary>
static class Dismissing
{
    public static IEnumerable<Finding> Apply(GuideContent guide, IReadOnlyList<Finding> findings)
    {
        var dismissals = guide.Entries.SelectMany(e => e.Dismissals).Concat(guide.Cases.SelectMany(c => c.Dismissals)).ToList();
        var used = new HashSet<Dismissal>();
        var kept = findings.Where(f => dismissals.Find(d => Covers(d, f)) is not { } by || !IsUsed(by)).ToList();
        return [.. kept, .. dismissals.SelectMany(d => Inspect(d, used.Contains(d)))];

        bool IsUsed(Dismissal by) => used.Add(by) || true;
    }

    static bool Covers(Dismissal dismissal, Finding finding) =>
        dismissal.Rule.Span.Path == finding.Span.Path
        && dismissal.Rule.Value == finding.Rule.Id
        && (dismissal.About is not { } about || about.Value == finding.About);

    static IEnumerable<Finding> Inspect(Dismissal dismissal, bool isUsed)
    {
        var (rule, about, reason) = dismissal;
        if (Rules.All.All(r => r.Id != rule.Value))
        {
            yield return Rules.DismissalRule.At(rule.Span, rule.Value, NearestName.Question(rule.Value, Rules.All.Select(r => r.Id)));
        }
        else if (!isUsed)
        {
            yield return Rules.DismissalUnused.At(rule.Span, rule.Value, about is { } a ? $" about '{a.Value}'" : "");
        }

        var words = reason.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
        if (words < 3) yield return Rules.DismissalReason.At(reason.Span, reason.Value);
    }
}
