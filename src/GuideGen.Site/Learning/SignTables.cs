using System.Collections.Immutable;
using GuideGen.Diagnosis.Proof;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Site.Planning;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Learning;

/// <summary>What the cases say.</summary>
static class SignTables
{
    public static IEnumerable<EvidenceTable> Of(SitePlan plan) => [Cases(plan), Signs(plan), Vain(plan), Ranking(plan)];

    /// <summary>The signs of the guide with their evidence, codes first.</summary>
    public static IEnumerable<(string Sign, SignEvidence Evidence)> All(SitePlan plan)
    {
        var codes = plan.Codes.Select(c => (Sign: c.ToString(), Evidence: plan.Evidence.Of(c)));
        var symptoms = plan.Guide.Symptoms.All.Select(s => (Sign: s.Origin.Slug, Evidence: plan.Evidence.OfSymptom(s.Origin.Slug)));
        return codes.Concat(symptoms).Where(s => s.Evidence is not null).Select(s => (s.Sign, s.Evidence!));
    }

    static EvidenceTable Cases(SitePlan plan) => EvidenceTable.Of(
        "cases",
        "Cases by variant and level of proof",
        "variant, proved, confirmed, probable, claimed, refuted",
        plan.Guide.Vehicle.Variants.Select(v => v.Key.Value).Select(variant =>
        {
            var levels = plan.Guide.Cases.Where(c => c.Variant.Value == variant).Select(plan.Evidence.LevelOf).ToList();
            return (ImmutableArray<object?>)[variant, .. Enum.GetValues<ProofLevel>().Reverse().Select(l => (object?)levels.Count(x => x == l))];
        }));

    static EvidenceTable Signs(SitePlan plan) => EvidenceTable.Of(
        "signs",
        "Causes of each code and symptom with counted reports",
        "sign, cause, reports, of, low, high, estimate, together, above next",
        from sign in All(plan)
        where sign.Evidence.Summary.Posterior.Cases > 0
        from cause in sign.Evidence.Summary.Causes
        select (ImmutableArray<object?>)
        [
            sign.Sign, cause.Id, cause.Reports.Count, cause.Reports.Total, Rounded(cause.Share?.Low), Rounded(cause.Share?.High),
            Rounded(cause.Opinion?.Mean), Rounded(cause.Mean), Rounded(cause.AboveNext),
        ]);

    static EvidenceTable Vain(SitePlan plan) => EvidenceTable.Of(
        "in-vain",
        "What owners did in vain",
        "what, times, spend, minutes",
        VainAttempts.In(plan.Guide.Cases).Where(v => v.Times > 1).Select(v => (ImmutableArray<object?>)[v.Part ?? v.What, v.Times, v.Spend, v.Minutes]));

    static EvidenceTable Ranking(SitePlan plan)
    {
        var test = SelfTest.Of(plan.Weights);
        return EvidenceTable.Of(
            "ranking",
            "The ranking, tried on each counted case without it",
            "ranked by, cases, first, first low, first high, first three, Brier",
            [Row("signs, estimates alone", test.ByAuthor), Row("signs, with cases", test.BySigns), Row("signs and checks, with cases", test.WithChecks)]);

        static ImmutableArray<object?> Row(string how, LeaveOneOut score)
        {
            var range = score.First.Interval();
            return [how, score.First.Total, score.First.Count, Rounded(range?.Low), Rounded(range?.High), score.FirstThree.Count, Rounded(score.Brier)];
        }
    }

    /// <summary>To three places: more would only look exact.</summary>
    public static double? Rounded(double? value) => value is { } v ? Math.Round(v, 3) : null;
}
