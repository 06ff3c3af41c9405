using System.Collections.Frozen;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Every name that one file uses for something in another stands for something.</summary>
sealed class NameInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var names = Enum.GetValues<NameKind>().Except(guide.Unsure).ToFrozenDictionary(k => k, k => KnownNames.SetOf(guide, k));
        var unknown = guide.References.Where(r => names.TryGetValue(r.Kind, out var known) && !known.Contains(r.Name.Value)).ToList();
        var questions = unknown.Select(r => r.Kind).Distinct().ToDictionary(k => k, k => KnownNames.Of(guide, k));
        return [.. unknown.Select(r => Unknown(r, questions[r.Kind])), .. guide.Cases.SelectMany(c => c.Checks).SelectMany(c => UnknownOutcome(guide, c))];
    }

    static Finding Unknown(Reference reference, IReadOnlyCollection<KnownName> known)
    {
        var (kind, name) = reference;
        var question = NameQuestion.For(name.Value, known);
        var finding = kind is NameKind.Hazard
            ? Rules.HazardUnknown.At(name.Span, name.Value, question)
            : Rules.NameUnknown.At(name.Span, NameKinds.Word(kind), name.Value, question);
        return finding.Concerning(name.Value);
    }

    static IEnumerable<Finding> UnknownOutcome(GuideContent guide, KeyValuePair<Located<string>, Located<string>> seen)
    {
        var (check, outcome) = seen;
        if (guide.Checks.Find(check.Value) is not { } known) return [];
        var names = known.Outcomes.Select(o => o.Key.Value).ToList();
        return names.Contains(outcome.Value)
            ? []
            : [Rules.OutcomeUnknown.At(outcome.Span, check.Value, outcome.Value, NearestName.Question(outcome.Value, names))];
    }
}
