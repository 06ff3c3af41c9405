using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Every name that one file uses for something in another stands for something.</summary>
sealed class NameInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var known = Enum.GetValues<NameKind>().ToDictionary(k => k, k => KnownNames.Of(guide, k));
        var names = known.ToDictionary(k => k.Key, k => k.Value.Select(n => n.Name).ToHashSet(StringComparer.Ordinal));
        var unknown = guide.References.Where(r => !guide.Unsure.Contains(r.Kind) && !names[r.Kind].Contains(r.Name.Value)).Select(r => Unknown(r, known[r.Kind]));
        return [.. unknown, .. guide.Cases.SelectMany(c => c.Checks).SelectMany(c => UnknownOutcome(guide, c))];
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
