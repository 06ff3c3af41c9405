using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>What cases show agrees with the page of the fault that they found; where it does not, one of the two has to learn.</summary>
sealed class CaseAgainstFaultInspection : IInspection
{
    // One vehicle may have had something else as well; two with the same sign hardly did.
    const int TellingCases = 2;

    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var cases = guide.Cases.ToLookup(c => c.Found.Value, StringComparer.Ordinal);
        return guide.Faults.All.SelectMany(f => (IEnumerable<Finding>)
        [
            .. Variants(guide, f, cases[f.Origin.Slug]),
            .. Signs(f, "code", f.Codes.Select(c => c.Key.Value.ToString()), cases[f.Origin.Slug].SelectMany(c => c.Codes.Select(k => k.Key.Value.ToString()))),
            .. Signs(f, "symptom", f.Symptoms.Select(s => s.Key.Value), cases[f.Origin.Slug].SelectMany(c => c.Symptoms.Present.Select(s => s.Value))),
        ]);
    }

    static IEnumerable<Finding> Variants(GuideContent guide, Fault fault, IEnumerable<SolvedCase> cases)
    {
        if (fault.Variants.IsEmpty) return [];
        var known = guide.Vehicle.Variants.Select(v => v.Key.Value).ToHashSet(StringComparer.Ordinal);
        var listed = fault.Variants.Select(v => v.Value).ToHashSet(StringComparer.Ordinal);
        if (!listed.IsSubsetOf(known)) return [];
        return
            from solved in cases
            let variant = solved.Variant.Value
            where known.Contains(variant) && !listed.Contains(variant)
            select Rules.CaseVariant.At(solved.Variant.Span, fault.Origin.Slug, variant).Concerning(variant).Resting(solved.Origin.Source.Path, fault.Origin.Source.Path);
    }

    static IEnumerable<Finding> Signs(Fault fault, string kind, IEnumerable<string> listed, IEnumerable<string> seen) =>
        from sign in seen.Except(listed, StringComparer.Ordinal).Order(StringComparer.Ordinal)
        let times = seen.Count(s => s == sign)
        where times >= TellingCases
        select Rules.CaseSignUnlisted.At(fault.Name.Span, kind, sign, $"{times}").Concerning(sign).Resting(fault.Origin.Source.Path);
}
