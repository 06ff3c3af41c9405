using System.Collections.Concurrent;
using System.Collections.Immutable;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide;

namespace GuideGen.Site.Weighing;

/// <summary>
/// How well the ranking does: each proved case is ranked by what the guide would say without it, for the variant of the
/// case. How much a variant leans on the others, what the authors' words weigh and what owners pass over is chosen once from
/// all cases, which flatters the result a little.
/// </summary>
public sealed class SelfTest
{
    /// <summary>
    /// More cases would tell little more (a share is then known to 2 of 100) and cost time that grows as the square of the guide. Our choice.
    /// </summary>
    const int Most = 2_000;

    SelfTest(GuideWeights weights, int most)
    {
        var tried = Spread(weights.Cases, most);
        IsOfAll = tried.Length == weights.Cases.Length;
        var unseen = new UnseenCases(weights.Authored, weights.Counts, weights.Basis);
        var none = new int[weights.Places.Count];
        var byAuthors = new ConcurrentDictionary<string, ImmutableArray<double>>(StringComparer.Ordinal);
        var trials = SideBySide.Map(tried, one =>
        {
            var (byAuthor, byOthers) = (unseen.ByAuthor(one), unseen.ByOthers(one));
            var variant = weights.VariantOf(one);
            int[] cases = [.. weights.CasesOf(variant)];
            cases[byOthers.Truth]--;
            var authored = byAuthors.GetOrAdd(variant, v => weights.SharesIn(v, byAuthor.Priors, none));
            var fitted = weights.SharesIn(variant, byOthers.Priors, cases);
            return (
                ByAuthor: RankingTrial.Of(weights.Fitted, authored, byAuthor.BySigns, byAuthor.Truth),
                BySigns: RankingTrial.Of(weights.Fitted, fitted, byOthers.BySigns, byOthers.Truth),
                WithChecks: RankingTrial.Of(weights.Fitted, fitted, byOthers.WithChecks, byOthers.Truth));
        });
        ByAuthor = LeaveOneOut.Of([.. trials.Select(t => t.ByAuthor)]);
        BySigns = LeaveOneOut.Of([.. trials.Select(t => t.BySigns)]);
        WithChecks = LeaveOneOut.Of([.. trials.Select(t => t.WithChecks)]);
    }

    /// <summary>False where a guide has so many cases that only some of them, spread evenly, were tried.</summary>
    public bool IsOfAll { get; }

    public static SelfTest Of(GuideWeights weights) => Of(weights, Most);

    /// <param name="most">How many cases are tried at most.</param>
    internal static SelfTest Of(GuideWeights weights, int most) => new(weights, most);

    /// <summary>From codes and symptoms alone, by the authors' estimates without any case.</summary>
    public LeaveOneOut ByAuthor { get; }

    /// <summary>From codes and symptoms alone: what an owner has before the first check.</summary>
    public LeaveOneOut BySigns { get; }

    /// <summary>With the outcomes of the checks that the cases state as well.</summary>
    public LeaveOneOut WithChecks { get; }

    /// <returns>So many of the items, in their order and equally far apart; all, if they are no more.</returns>
    internal static ImmutableArray<T> Spread<T>(ImmutableArray<T> items, int most) =>
        items.Length <= most ? items : [.. Enumerable.Range(0, most).Select(i => items[(int)((long)i * items.Length / most)])];
}
