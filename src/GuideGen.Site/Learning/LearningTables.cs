using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Learning;

/// <summary>What the guide should learn next: where a few cases or a new check would take away most doubt.</summary>
static class LearningTables
{
    const int Longest = 20;

    /// <summary>So many more cases are imagined of each sign.</summary>
    const int MoreCases = 5;

    // Two causes whose every outcome is nearly as likely are not told apart by a check.
    const double Alike = 0.1;

    public static IEnumerable<EvidenceTable> Of(SitePlan plan) => [Cases(plan), Checks(plan), Alikes(plan)];

    static EvidenceTable Cases(SitePlan plan) => EvidenceTable.Of(
        "next-cases",
        $"Signs of which {MoreCases} more cases would narrow the leading cause most",
        "sign, leading cause, next cause, first is first, range now, range then",
        SignTables.All(plan).Where(s => s.Evidence.Summary.Causes.Length > 2).Select(s =>
        {
            var (first, next) = (s.Evidence.Summary.Causes[0], s.Evidence.Summary.Causes[1]);
            var now = first.Posterior?.Interval().Width ?? 0;
            return (s.Sign, First: first, Next: next, Now: now, Then: Then(first.Posterior));
        }).OrderByDescending(s => Math.Round(s.Now - s.Then, 9)).ThenBy(s => s.Sign, StringComparer.Ordinal).Take(Longest)
        .Select(s => (ImmutableArray<object?>)[s.Sign, s.First.Id, s.Next.Id, SignTables.Rounded(s.First.AboveNext), SignTables.Rounded(s.Now), SignTables.Rounded(s.Then)]));

    /// <summary>The range if the imagined cases fall as is now expected.</summary>
    static double Then(BetaDistribution? share) => share is { } s
        ? new BetaDistribution(s.Alpha + (MoreCases * s.Mean), s.Beta + (MoreCases * (1 - s.Mean))).Interval().Width
        : 0;

    static EvidenceTable Checks(SitePlan plan) => EvidenceTable.Of(
        "next-checks",
        "Symptoms whose best check leaves most doubt, in bits",
        "symptom, doubt, best check, takes away, left",
        plan.Guide.Symptoms.All.Select(s =>
        {
            var answers = Answers.Nothing.With(s.Origin.Slug, true);
            var doubt = CauseRanking.Of(plan.Weights.Fitted, answers).Causes.Sum(c => c.Probability > 0 ? -c.Probability * Math.Log2(c.Probability) : 0);
            var best = NextChecks.Of(plan.Weights.Fitted, answers, FrozenSet<string>.Empty, FrozenSet<string>.Empty).MaxBy(n => Math.Round(n.Bits, 9));
            return (Symptom: s.Origin.Slug, Doubt: doubt, best?.Check, Bits: best?.Bits ?? 0);
        }).OrderByDescending(s => Math.Round(s.Doubt - s.Bits, 9)).ThenBy(s => s.Symptom, StringComparer.Ordinal).Take(Longest)
        .Select(s => (ImmutableArray<object?>)[s.Symptom, SignTables.Rounded(s.Doubt), s.Check, SignTables.Rounded(s.Bits), SignTables.Rounded(s.Doubt - s.Bits)]));

    static EvidenceTable Alikes(SitePlan plan)
    {
        var model = plan.Weights.Authored;
        var index = model.Hypotheses.Select((h, i) => (h.Id, i)).ToDictionary(h => h.Id, h => h.i);
        return EvidenceTable.Of(
            "not-told-apart",
            "Leading causes of a sign that no check of the guide tells apart",
            "sign, cause, other cause",
            from sign in SignTables.All(plan)
            let causes = sign.Evidence.Summary.Causes.Where(c => c.Id != WeightedCause.SomethingElse).Take(2).Select(c => c.Id).ToList()
            where causes.Count == 2 && model.Checks.All(c => IsAlike(c, index[causes[0]], index[causes[1]]))
            select (ImmutableArray<object?>)[sign.Sign, causes[0], causes[1]]);
    }

    static bool IsAlike(UncertainCheck check, int first, int second) =>
        check.Outcomes.All(o => Math.Abs(o.Likelihoods[first] - o.Likelihoods[second]) < Alike);
}
