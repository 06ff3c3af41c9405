using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Takes out the findings that an author dismissed in writing, and looks at the dismissals themselves.</summary>
static class Dismissing
{
    static readonly string Dismissible = string.Join(", ", Rules.All.Where(r => r.CanBeDismissed).Select(r => r.Id));

    public static IEnumerable<Finding> Apply(GuideContent guide, IReadOnlyList<Finding> findings)
    {
        var dismissals = guide.Entries.SelectMany(e => e.Dismissals).Concat(guide.Cases.SelectMany(c => c.Dismissals)).ToList();
        var byPage = dismissals.ToLookup(d => (d.Rule.Span.Path, d.Rule.Value));
        Dismissal? For(Finding f) => byPage[(f.Span.Path, f.Rule.Id)].FirstOrDefault(d => Covers(d, f)) ?? Elsewhere(f);
        Dismissal? Elsewhere(Finding f) => f.AlsoOn is { } also ? byPage[(also.Path, f.Rule.Id)].FirstOrDefault(d => Covers(d, f.Concerning(also.About))) : null;
        var open = guide.Trees.All.Where(t => t.IsUnbuilt).SelectMany(t => t.Dismissals).ToHashSet();
        var covered = findings.ToLookup(For);
        return [.. covered[null], .. dismissals.SelectMany(d => Inspect(guide, d, covered.Contains(d) || open.Contains(d)))];
    }

    static bool Covers(Dismissal dismissal, Finding finding) =>
        finding.Rule.CanBeDismissed && (dismissal.About is not { } about || about.Value == finding.About);

    static IEnumerable<Finding> Inspect(GuideContent guide, Dismissal dismissal, bool isUsed)
    {
        var words = dismissal.Reason.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
        if (words < 3) yield return Rules.DismissalReason.At(dismissal.Reason.Span, dismissal.Reason.Value);
        if (!isUsed) yield return InVain(guide, dismissal);
    }

    /// <summary>Whether a finding would be there is not known while a page that it rests on has errors.</summary>
    static Finding InVain(GuideContent guide, Dismissal dismissal)
    {
        var (name, span) = dismissal.Rule;
        var about = dismissal.About is { } a ? $" about '{a.Value}'" : "";
        return Rules.All.FirstOrDefault(r => r.Id == name) switch
        {
            null => Rules.DismissalRule.At(span, name, NearestName.Question(name, Rules.All.Select(r => r.Id))),
            { CanBeDismissed: false } => Rules.DismissalFirm.At(span, name, Dismissible),
            { IsAcrossPages: true } => Rules.DismissalUnused.At(span, name, about).Resting(guide.Files),
            _ => Rules.DismissalUnused.At(span, name, about).Resting(span.Path),
        };
    }
}
