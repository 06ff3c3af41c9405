using System.Collections.Immutable;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Weighing;

/// <summary>
/// How well the ranking does: each proved case is ranked by what the guide would say without it, for the variant of the
/// case. How much a variant leans on the others is chosen once from all cases, which flatters the result a little.
/// </summary>
public sealed class SelfTest
{
    readonly Dictionary<string, HashSet<string>> absent;
    readonly RankingModel authored;
    readonly double worth;

    SelfTest(GuideContent guide, GuideWeights weights)
    {
        authored = weights.Authored;
        worth = weights.PoolingWorth;
        absent = guide.Vehicle.Variants.ToDictionary(
            v => v.Key.Value,
            v => guide.Faults.All.Where(f => !GuideWeights.Fits(f, v.Key.Value)).Select(f => f.Origin.Slug).ToHashSet());
        var variants = guide.Cases.ToDictionary(c => c.Origin.Slug, c => c.Variant.Value, StringComparer.Ordinal);
        ByAuthor = LeaveOneOut.OfEach(WithoutChecks(weights.Cases), i => ForVariant(authored.Reduced(weights.Cases[i].Answers), variants[weights.Cases[i].Id], []));
        BySigns = Score(WithoutChecks(weights.Cases), variants);
        WithChecks = Score(weights.Cases, variants);
    }

    public static SelfTest Of(GuideContent guide, GuideWeights weights) => new(guide, weights);

    /// <summary>From codes and symptoms alone, by the authors' estimates without any case.</summary>
    public LeaveOneOut ByAuthor { get; }

    /// <summary>From codes and symptoms alone: what an owner has before the first check.</summary>
    public LeaveOneOut BySigns { get; }

    /// <summary>With the outcomes of the checks that the cases state as well.</summary>
    public LeaveOneOut WithChecks { get; }

    static ImmutableArray<Diagnosis.Ranking.SolvedCase> WithoutChecks(ImmutableArray<Diagnosis.Ranking.SolvedCase> cases) =>
        [.. cases.Select(c => c with { Answers = c.Answers with { Outcomes = Answers.Nothing.Outcomes } })];

    LeaveOneOut Score(ImmutableArray<Diagnosis.Ranking.SolvedCase> cases, Dictionary<string, string> variants) =>
        LeaveOneOut.OfEach(cases, i => Without(cases, i, variants));

    /// <summary>Only what the case answers is fitted: the rest of the model says nothing about it.</summary>
    RankingModel Without(ImmutableArray<Diagnosis.Ranking.SolvedCase> cases, int at, Dictionary<string, string> variants)
    {
        var left = cases.RemoveAt(at);
        var variant = variants[cases[at].Id];
        var counts = left.Where(c => variants[c.Id] == variant).CountBy(c => c.Cause).ToDictionary();
        return ForVariant(ModelFit.Of(authored.Reduced(cases[at].Answers), left), variant, counts);
    }

    RankingModel ForVariant(RankingModel model, string variant, Dictionary<string, int> counts)
    {
        var all = new CausePosterior(model.Hypotheses.Select(h => new CauseCount(h.Id, h.Prior, 0)));
        var shares = Pooling.ForVariant(all, worth, counts, absent[variant]);
        return model.WithPriors([.. model.Hypotheses.Select(h => shares.Mean(h.Id))]);
    }
}
