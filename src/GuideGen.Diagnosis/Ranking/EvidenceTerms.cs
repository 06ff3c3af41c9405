using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What one finding, group or check says: the logarithm of its likelihood under each hypothesis.</summary>
internal sealed record EvidenceTerm(string Source, double[] Logs);

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

    static IEnumerable<EvidenceTerm> Single(Finding finding, Answers answers)
    {
        if (answers.Findings.TryGetValue(finding.Id, out bool present))
            yield return new(finding.Id, Logs(finding.Likelihoods, present));
    }

    // Most hypotheses of a row share one stray rate, whose logarithm is taken once.
    static double[] Logs(ImmutableArray<double> likelihoods, bool present)
    {
        double[] logs = new double[likelihoods.Length];
        double known = double.NaN, log = 0;
        for (int h = 0; h < logs.Length; h++)
        {
            if (likelihoods[h] != known)
                (known, log) = (likelihoods[h], Math.Log(present ? likelihoods[h] : 1 - likelihoods[h]));
            logs[h] = log;
        }

        return logs;
    }

    static IEnumerable<EvidenceTerm> Group(FindingGroup group, ImmutableArray<Finding> members, Answers answers)
    {
        ImmutableArray<EvidenceTerm> known = [.. members.SelectMany(m => Single(m, answers))];
        if (known.IsEmpty)
            return [];
        return group.Rule switch
        {
            GroupRule.Strongest => [known.MaxBy(Spread)!],
            GroupRule.Shared => known.Select(t => t with { Logs = [.. t.Logs.Select(l => l / known.Length)] }),
            GroupRule.Joint => [Joint(group, answers)],
            _ => throw new ArgumentOutOfRangeException(nameof(group)),
        };
    }

    // How far a term can move two hypotheses against each other; among equals the first member speaks.
    static double Spread(EvidenceTerm term) => Math.Round(term.Logs.Max() - term.Logs.Min(), 12);

    // An unknown member is summed out: every combination that fits what is known counts.
    static EvidenceTerm Joint(FindingGroup group, Answers answers)
    {
        char?[] wanted =
        [
            .. group.Members.Select(m =>
                answers.Findings.TryGetValue(m, out bool present) ? present ? '1' : '0' : (char?)null),
        ];
        ImmutableArray<JointRow> fitting =
            [.. group.Joint.Where(r => r.Pattern.Zip(wanted, (has, want) => want is null || has == want).All(x => x))];
        int width = fitting[0].Likelihoods.Length;
        return new(group.Id,
            [.. Enumerable.Range(0, width).Select(h => Math.Log(fitting.Sum(r => r.Likelihoods[h])))]);
    }

    static IEnumerable<EvidenceTerm> OfCheck(UncertainCheck check, Answers answers)
    {
        if (answers.Outcomes.TryGetValue(check.Id, out string? seen)
            && check.Outcomes.FirstOrDefault(o => o.Id == seen) is { } outcome)
            yield return new(check.Id, [.. outcome.Likelihoods.Select(Math.Log)]);
    }
}
