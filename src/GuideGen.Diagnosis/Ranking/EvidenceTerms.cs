using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What one finding, group or check says: the logarithm of its likelihood under each hypothesis.</summary>
internal sealed record EvidenceTerm(string Source, LikelihoodRow Logs);

/// <summary>Turns answers into independent terms, in the model's order, so that the order of the answers is nothing.</summary>
internal static class EvidenceTerms
{
    public static ImmutableArray<EvidenceTerm> Of(RankingModel model, Answers answers) =>
        [.. SignUnit.Of(model).SelectMany(u => Of(u, answers)), .. OfChecks(model, answers)];

    public static IEnumerable<EvidenceTerm> Of(SignUnit unit, Answers answers) =>
        unit.Group is { } group ? Group(group, unit.Members, answers) : Single(unit.Members[0], answers);

    public static IEnumerable<EvidenceTerm> OfChecks(RankingModel model, Answers answers) => model.Checks.SelectMany(c => OfCheck(c, answers));

    /// <summary>The logarithms of all terms together, by hypothesis.</summary>
    public static double[] Sum(IEnumerable<EvidenceTerm> terms, int hypotheses)
    {
        double[] sum = new double[hypotheses];
        Add(terms, sum);
        return sum;
    }

    /// <summary>The usual values are summed by kind, so that a thousand codes that were not there cost little more than one.</summary>
    /// <param name="sum">By hypothesis; the logarithms are added to it.</param>
    public static void Add(IEnumerable<EvidenceTerm> terms, double[] sum)
    {
        double ofAll = 0;
        Dictionary<CauseKinds, double[]> byKind = [];
        foreach (LikelihoodRow logs in terms.Select(t => t.Logs))
        {
            ReadOnlySpan<double> usual = logs.Usual;
            for (int i = 0; i < logs.Places.Length; i++)
                sum[logs.Places[i]] += logs.Own[i] - usual[logs.Kinds.Of(logs.Places[i])];
            if (usual.Length > 1)
                Add(usual, CollectionsMarshal.GetValueRefOrAddDefault(byKind, logs.Kinds, out _) ??= new double[usual.Length]);
            else
                ofAll += usual[0];
        }

        for (int h = 0; h < sum.Length; h++)
            sum[h] += ofAll;
        foreach (var (kinds, values) in byKind)
            for (int h = 0; h < sum.Length; h++)
                sum[h] += values[kinds.Of(h)];
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

    /// <summary>How far a term can move two hypotheses against each other; among equals the first member speaks.</summary>
    public static double Spread(EvidenceTerm term)
    {
        (double least, double most) = (double.MaxValue, double.MinValue);
        foreach (var (value, _) in term.Logs.Values())
            (least, most) = (Math.Min(least, value), Math.Max(most, value));
        return Spread(least, most);
    }

    /// <summary>Rounded, so that the last digit of a sum decides nothing.</summary>
    public static double Spread(double least, double most) => Math.Round(most - least, 12);

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
