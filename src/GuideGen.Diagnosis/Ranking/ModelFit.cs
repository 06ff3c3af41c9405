using System.Collections.Immutable;
using System.Runtime.InteropServices;

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
    public static RankingModel Of(RankingModel authored, CaseCounts counts, FitBasis basis) =>
        MoveSigns(authored, counts, basis).WithPriors(Priors(authored.Priors, counts));

    /// <summary>What weighs for each hypothesis: the author's belief and its cases.</summary>
    /// <param name="authored">The author's priors, in the model's order.</param>
    internal static ImmutableArray<double> Priors(ImmutableArray<double> authored, CaseCounts counts)
    {
        double[] moved = [.. authored];
        for (int h = 0; h < moved.Length; h++)
            moved[h] += counts.CountOf(h);
        return ImmutableCollectionsMarshal.AsImmutableArray(moved);
    }

    /// <summary>The model with what its causes show moved, and the priors as they were.</summary>
    internal static RankingModel MoveSigns(RankingModel authored, CaseCounts counts, FitBasis basis) => authored with
    {
        Findings = [.. authored.Findings.Select(f => Move(f, counts, basis))],
        Groups = [.. authored.Groups.Select(g => Move(g, counts, basis.Worth))],
        Checks = [.. authored.Checks.Select(c => Move(c, counts, basis.Worth))],
    };

    static Finding Move(Finding finding, CaseCounts counts, FitBasis basis)
    {
        FindingCounts seen = counts.Of(finding.Id);
        // Where absence is never told, silence cannot be weighed either.
        if (!seen.IsLookedFor && seen.Tally.Places.All(p => seen.Tally.At(p).Absent == 0))
            return finding;
        double pooled = finding.OthersAreStrays ? Pooled(finding, seen, basis.Habit) : 0;
        return finding with { Likelihoods = Row(finding, seen, basis, pooled) };
    }

    /// <summary>The likelihoods of a finding, moved.</summary>
    /// <param name="pooled">What those lean on that nobody stated.</param>
    internal static LikelihoodRow Row(Finding finding, FindingCounts seen, FitBasis basis, double pooled)
    {
        LikelihoodRow stated = finding.Likelihoods;
        CauseKinds kinds = seen.Counts.Kinds;
        int last = stated.Count - 1;
        int[] own = [.. seen.Places.Concat(stated.Places.ToArray()).Append(last).Distinct().Order()];
        double Moved(int h) => finding.IsStray(h) ? Unstated(pooled, basis, seen.At(h))
            : h == last ? Unstated(stated[h], basis, seen.At(h))
            : basis.Habit.Shift(stated[h], basis.Worth, seen.At(h));
        double[] usual = new double[kinds.Sizes.Length];
        foreach (var (kind, h) in Examples(kinds, own))
            usual[kind] = Moved(h);
        return Likelihood.Bound(LikelihoodRow.Of(kinds, usual, own.Select(h => (h, Moved(h)))));
    }

    /// <summary>A likelihood that nobody stated, or of something else, moved.</summary>
    internal static double Unstated(double likelihood, FitBasis basis, Shown cases) => basis.Habit.Shift(likelihood, StrayWorth, cases);

    /// <summary>A hypothesis of each kind that has no counts or likelihood of its own, where there is one.</summary>
    static IEnumerable<(int Kind, int Hypothesis)> Examples(CauseKinds kinds, int[] own)
    {
        for (int kind = 0; kind < kinds.Members.Length; kind++)
        {
            foreach (int h in kinds.Members[kind])
            {
                if (Array.BinarySearch(own, h) >= 0)
                    continue;
                yield return (kind, h);
                break;
            }
        }
    }

    /// <summary>The mean stray rate, moved by the cases of all hypotheses without a statement together.</summary>
    /// <param name="leftOut">Counted, and not to be.</param>
    internal static double Pooled(Finding finding, FindingCounts seen, ReportHabit habit, Shown leftOut = default)
    {
        LikelihoodRow stated = finding.Likelihoods;
        if (stated.Places.Length == stated.Count)
            return 0;
        Shown strays = seen.All() - leftOut;
        foreach (int h in stated.Places)
            strays -= seen.At(h);
        return habit.Shift(stated.Usual[0], StrayWorth, strays);
    }

    static UncertainCheck Move(UncertainCheck check, CaseCounts counts, double worth)
    {
        var moved = MoveTable(
            [.. check.Outcomes.Select(o => o.Likelihoods)],
            [.. check.Outcomes.Select(o => counts.OfOutcome(check.Id, o.Id))],
            worth);
        return check with { Outcomes = [.. check.Outcomes.Select((o, i) => o with { Likelihoods = moved[i] })] };
    }

    static FindingGroup Move(FindingGroup group, CaseCounts counts, double worth)
    {
        bool Shows(Answers answers, string pattern) =>
            pattern.Zip(group.Members, (has, member) => answers.Has(member) == (has == '1')).All(x => x);
        var moved = MoveTable(
            [.. group.Joint.Select(r => r.Likelihoods)],
            [.. group.Joint.Select(r => counts.Count(a => Shows(a, r.Pattern)))],
            worth);
        return group with { Joint = [.. group.Joint.Select((r, i) => r with { Likelihoods = moved[i] })] };
    }

    static ImmutableArray<LikelihoodRow> MoveTable(
        ImmutableArray<LikelihoodRow> rows, ImmutableArray<IReadOnlyDictionary<int, int>> counts, double worth) =>
        Likelihood.BoundTable(LikelihoodTable.Map(
            rows,
            (h, column) =>
            {
                int[] shown = [.. counts.Select(c => c.GetValueOrDefault(h))];
                return [.. column.Select((l, r) => (worth * l + shown[r]) / (worth + shown.Sum()))];
            },
            counts.SelectMany(c => c.Keys)));
}
