using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What a fit rests on beside the counts; chosen once from all cases.</summary>
/// <param name="Worth">So many cases an author's word about a likelihood weighs as.</param>
/// <param name="Habit">What owners tell and what they pass over.</param>
public sealed record FitBasis(double Worth, ReportHabit Habit)
{
    static readonly ImmutableArray<double> Candidates = [1, 2, 4, 8, 16, 32, 64, 128, 256, 512, 1024];

    /// <summary>
    /// The worth is the one (1, 2, 4, to 1,024 cases) under which each answer that was looked for, and each outcome of a
    /// check, is best foretold by the other cases (leave-one-out log score; the idea is that of an empirical prior, A. Gelman
    /// et al. 2013, Bayesian Data Analysis, 3rd ed., 5.1). Of equal ones, and without cases, the greatest: rather trust the author.
    /// </summary>
    public static FitBasis Of(RankingModel authored, CaseCounts counts)
    {
        var observed = Observed(authored, counts).ToList();
        double Score(double worth) => observed.Sum(o =>
            o.Count * Math.Log(Math.Max(1e-12, (worth * o.Stated + o.Count - 1) / (worth + o.Asked - 1))));
        double best = Candidates.Select(k => (Worth: k, Score: Score(k)))
            .Aggregate((best, next) => next.Score >= best.Score - 1e-12 ? next : best).Worth;
        return new(best, ReportHabit.Of(authored, counts));
    }

    /// <summary>Each thing that cases showed: how likely the author has it, how often it was shown, and how often asked.</summary>
    static IEnumerable<(double Stated, int Count, int Asked)> Observed(RankingModel authored, CaseCounts counts) =>
    [
        .. authored.Findings.SelectMany(f => OfFinding(f, counts)),
        .. authored.Checks.SelectMany(c => OfCheck(c, counts)),
    ];

    static IEnumerable<(double, int, int)> OfFinding(Finding finding, CaseCounts counts)
    {
        FindingCounts seen = counts.Of(finding.Id);
        if (!seen.IsLookedFor)
            yield break;
        foreach (int h in finding.Stated)
        {
            Shown shown = seen.At(h);
            if (shown.Present > 0)
                yield return (finding.Likelihoods[h], shown.Present, shown.Asked);
            if (shown.Absent > 0)
                yield return (1 - finding.Likelihoods[h], shown.Absent, shown.Asked);
        }
    }

    static IEnumerable<(double, int, int)> OfCheck(UncertainCheck check, CaseCounts counts)
    {
        var shown = check.Outcomes.Select(o => (o.Likelihoods, Counts: counts.OfOutcome(check.Id, o.Id))).ToList();
        return
            from h in shown.SelectMany(s => s.Counts.Keys).Distinct().Order()
            let asked = shown.Sum(s => s.Counts.GetValueOrDefault(h))
            from outcome in shown
            let count = outcome.Counts.GetValueOrDefault(h)
            where count > 0
            select (outcome.Likelihoods[h], count, asked);
    }
}
