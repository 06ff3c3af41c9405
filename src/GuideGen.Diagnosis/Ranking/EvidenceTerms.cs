using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What one finding, group or check says: the logarithm of its likelihood under each hypothesis.</summary>
internal sealed record EvidenceTerm(string Source, LikelihoodRow Logs);

/// <summary>Turns answers into independent terms, in the model's order, so that the order of the answers is nothing.</summary>
internal static class EvidenceTerms
{
    public static ImmutableArray<EvidenceTerm> Of(RankingModel model, Answers answers)
    {
        HashSet<string> grouped = [.. model.Groups.SelectMany(g => g.Members)];
        Dictionary<string, Finding> findings = model.Findings.Where(f => grouped.Contains(f.Id)).ToDictionary(f => f.Id, StringComparer.Ordinal);
        return
        [
            .. model.Findings.Where(f => !grouped.Contains(f.Id)).SelectMany(f => Single(f, answers)),
            .. model.Groups.SelectMany(g => Group(g, [.. g.Members.Select(m => findings[m])], answers)),
            .. model.Checks.SelectMany(c => OfCheck(c, answers)),
        ];
    }

    /// <summary>
    /// The logarithms of all terms together, by hypothesis, up to what is the same for all. The usual values are summed by kind, so
    /// that a thousand codes that were not there cost little more than one.
    /// </summary>
    public static double[] Sum(IEnumerable<EvidenceTerm> terms, int hypotheses)
    {
        double[] sum = new double[hypotheses];
        Dictionary<CauseKinds, double[]> byKind = [];
        foreach (LikelihoodRow logs in terms.Select(t => t.Logs))
        {
            ReadOnlySpan<double> usual = logs.Usual;
            for (int i = 0; i < logs.Places.Length; i++)
                sum[logs.Places[i]] += logs.Own[i] - usual[logs.Kinds.Of(logs.Places[i])];
            if (usual.Length > 1)
                Add(usual, CollectionsMarshal.GetValueRefOrAddDefault(byKind, logs.Kinds, out _) ??= new double[usual.Length]);
        }

        foreach (var (kinds, values) in byKind)
            for (int h = 0; h < sum.Length; h++)
                sum[h] += values[kinds.Of(h)];
        return sum;
    }

    static void Add(ReadOnlySpan<double> values, double[] to)
    {
        for (int i = 0; i < to.Length; i++)
            to[i] += values[i];
    }

    static IEnumerable<EvidenceTerm> Single(Finding finding, Answers answers)
    {
        if (answers.Has(finding.Id) is { } present)
            yield return new(finding.Id, finding.Likelihoods.Map(l => Math.Log(present ? l : 1 - l)));
    }

    static IEnumerable<EvidenceTerm> Group(FindingGroup group, ImmutableArray<Finding> members, Answers answers)
    {
        ImmutableArray<EvidenceTerm> known = [.. members.SelectMany(m => Single(m, answers))];
        if (known.IsEmpty)
            return [];
        return group.Rule switch
        {
            GroupRule.Strongest => [known.MaxBy(Spread)!],
            GroupRule.Shared => known.Select(t => t with { Logs = t.Logs.Map(l => l / known.Length) }),
            GroupRule.Joint => [Joint(group, answers)],
            _ => throw new ArgumentOutOfRangeException(nameof(group)),
        };
    }

    // How far a term can move two hypotheses against each other; among equals the first member speaks.
    static double Spread(EvidenceTerm term)
    {
        (double least, double most) = (double.MaxValue, double.MinValue);
        foreach (var (value, _) in term.Logs.Values())
            (least, most) = (Math.Min(least, value), Math.Max(most, value));
        return Math.Round(most - least, 12);
    }

    // An unknown member is summed out: every combination that fits what is known counts.
    static EvidenceTerm Joint(FindingGroup group, Answers answers)
    {
        char?[] wanted =
        [
            .. group.Members.Select(m =>
                answers.Has(m) is { } present ? present ? '1' : '0' : (char?)null),
        ];
        ImmutableArray<JointRow> fitting =
            [.. group.Joint.Where(r => r.Pattern.Zip(wanted, (has, want) => want is null || has == want).All(x => x))];
        LikelihoodRow sum = LikelihoodTable.Map([.. fitting.Select(r => r.Likelihoods)], (_, column) => [.. column.Select(_ => column.Sum())])[0];
        return new(group.Id, sum.Map(Math.Log));
    }

    static IEnumerable<EvidenceTerm> OfCheck(UncertainCheck check, Answers answers)
    {
        if (answers.Outcomes.TryGetValue(check.Id, out string? seen)
            && check.Outcomes.FirstOrDefault(o => o.Id == seen) is { } outcome)
            yield return new(check.Id, outcome.Likelihoods.Map(Math.Log));
    }
}
