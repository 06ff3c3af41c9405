using System.IO.Enumeration;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Gives findings the weight that the guide's settings ask for, and looks at the settings themselves.</summary>
/// <remarks>
/// A finding may always weigh more. It may weigh less only if an author could dismiss it; what the rule book or a grave
/// hazard makes an error stays a warning at least, and so does everything about safety.
/// </remarks>
static class Weighting
{
    public static IEnumerable<Finding> Apply(GuideContent guide, IEnumerable<Finding> findings)
    {
        var weights = guide.Settings.Weights;
        return [.. findings.Select(f => Weigh(f, weights.LastOrDefault(w => Covers(w, f)))).OfType<Finding>(), .. weights.SelectMany(w => Inspect(guide, w))];
    }

    static bool Covers(RuleWeight weight, Finding finding) => weight.Rule.Value == finding.Rule.Id && Covers(weight, finding.Span.Path);

    static bool Covers(RuleWeight weight, string path) => FileSystemName.MatchesSimpleExpression(weight.Files.Value, path, ignoreCase: false);

    static Finding? Weigh(Finding finding, RuleWeight? weight)
    {
        if (weight is null) return finding;
        var least = Least(finding.Rule, finding.Severity);
        var wanted = weight.Weight.Value;
        if (wanted is null && least is null) return null;
        return finding.Weighing(wanted is { } severity && (least is null || severity >= least) ? severity : least!.Value);
    }

    /// <returns>Null if findings of the rule may be left out.</returns>
    static Severity? Least(Rule rule, Severity severity)
    {
        if (!rule.CanBeDismissed) return severity;
        return severity is Severity.Error || rule.IsAboutSafety ? Severity.Warning : null;
    }

    static IEnumerable<Finding> Inspect(GuideContent guide, RuleWeight weight)
    {
        var (name, span) = weight.Rule;
        if (weight.Reason.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length < 3) yield return Rules.DismissalReason.At(weight.Reason.Span, weight.Reason.Value);
        if (Rules.All.FirstOrDefault(r => r.Id == name) is not { } rule) yield return Rules.DismissalRule.At(span, name, NearestName.Question(name, Rules.All.Select(r => r.Id)));
        else if (Least(rule, rule.Severity) is { } least && !(weight.Weight.Value >= least)) yield return Rules.WeightFirm.At(weight.Weight.Span, name, SeverityWords.Key(least));
        if (!guide.Files.Concat(Loading.FileSorting.SingleFiles).Any(f => Covers(weight, f))) yield return Rules.WeightIdle.At(weight.Files.Span, weight.Files.Value);
    }
}
