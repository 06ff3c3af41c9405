using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// An author's model moved by cases. The author's priors are read as equivalent cases, and each of his likelihoods as a
/// share worth some cases (<see cref="FitBasis"/>); every case adds one to what it shows. Likelihoods that nobody
/// stated lean on their mean over all hypotheses without a statement: partial pooling, so that a cause with many cases is
/// not told from one with few by what both hardly ever show.
/// </summary>
public static class ModelFit
{
    /// <summary>What nobody stated weighs as much as so many cases. Our choice.</summary>
    const double StrayWorth = 4;

    public static RankingModel Of(RankingModel authored, IReadOnlyCollection<SolvedCase> cases)
    {
        CaseCounts counts = CaseCounts.Of(authored, cases);
        return Of(authored, counts, FitBasis.Of(authored, counts));
    }

    /// <param name="authored">The model that was counted by, or a part of it.</param>
    /// <param name="counts">By the hypotheses of the model.</param>
    /// <param name="basis">Of the whole model.</param>
    public static RankingModel Of(RankingModel authored, CaseCounts counts, FitBasis basis)
    {
        ImmutableArray<double> priors = [.. authored.Hypotheses.Select((h, i) => h.Prior + counts.CountOf(i))];
        return authored.WithPriors(priors) with
        {
            Findings = [.. authored.Findings.Select(f => Move(f, counts, basis))],
            Groups = [.. authored.Groups.Select(g => Move(g, counts, basis.Worth))],
            Checks = [.. authored.Checks.Select(c => Move(c, counts, basis.Worth))],
        };
    }

    /// <summary>A finding that some case looked for learns from such cases only: the others may have passed over it.</summary>
    static Finding Move(Finding finding, CaseCounts counts, FitBasis basis)
    {
        if (counts.LookedFor(finding.Id) is { } sure)
            return Move(finding, sure, _ => 0, basis);
        Tally told = counts.Told(finding.Id);
        // Where absence is never told, silence cannot be weighed either.
        return told.Absent.All(a => a == 0)
            ? finding
            : Move(finding, told, h => counts.CountOf(h) - told.Present[h] - told.Absent[h], basis);
    }

    static Finding Move(Finding finding, Tally tally, Func<int, int> silent, FitBasis basis)
    {
        ImmutableArray<double> stated = finding.Likelihoods;
        double pooled = Pooled(finding, tally, silent, basis.Habit);
        double[] moved = new double[stated.Length];
        for (int h = 0; h < moved.Length; h++)
        {
            bool isStray = finding.IsStray(h), isElse = h == moved.Length - 1;
            moved[h] = basis.Habit.Shift(
                isStray ? pooled : stated[h], isStray || isElse ? StrayWorth : basis.Worth, tally.Present[h], tally.Absent[h], silent(h));
        }

        return finding with { Likelihoods = Likelihood.Bound(moved) };
    }

    /// <summary>The mean stray rate, moved by the cases of all hypotheses without a statement together.</summary>
    static double Pooled(Finding finding, Tally tally, Func<int, int> silent, ReportHabit habit)
    {
        int strays = 0, present = 0, absent = 0, unsaid = 0;
        double stated = 0;
        for (int h = 0; h < finding.Likelihoods.Length; h++)
        {
            if (!finding.IsStray(h))
                continue;
            strays++;
            stated += finding.Likelihoods[h];
            present += tally.Present[h];
            absent += tally.Absent[h];
            unsaid += silent(h);
        }

        return strays == 0 ? 0 : habit.Shift(stated / strays, StrayWorth, present, absent, unsaid);
    }

    static UncertainCheck Move(UncertainCheck check, CaseCounts counts, double worth)
    {
        var moved = MoveTable(
            [.. check.Outcomes.Select(o => o.Likelihoods)],
            [.. check.Outcomes.Select(o => counts.Count(a => a.Outcomes.GetValueOrDefault(check.Id) == o.Id))],
            worth);
        return check with { Outcomes = [.. check.Outcomes.Select((o, i) => o with { Likelihoods = moved[i] })] };
    }

    static FindingGroup Move(FindingGroup group, CaseCounts counts, double worth)
    {
        bool Shows(Answers answers, string pattern) => pattern.Zip(group.Members, (has, member) =>
            answers.Findings.TryGetValue(member, out bool present) && present == (has == '1')).All(x => x);
        var moved = MoveTable(
            [.. group.Joint.Select(r => r.Likelihoods)],
            [.. group.Joint.Select(r => counts.Count(a => Shows(a, r.Pattern)))],
            worth);
        return group with { Joint = [.. group.Joint.Select((r, i) => r with { Likelihoods = moved[i] })] };
    }

    static ImmutableArray<ImmutableArray<double>> MoveTable(
        ImmutableArray<ImmutableArray<double>> rows, ImmutableArray<int[]> counts, double worth) => Likelihood.BoundTable(
    [
        .. rows.Select((row, r) => row.Select((l, h) =>
            (worth * l + counts[r][h]) / (worth + counts.Sum(c => c[h]))).ToImmutableArray()),
    ]);
}
