using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace GuideGen.Diagnosis.Evidence;

/// <summary>
/// Partial pooling: a variant with few cases leans on all variants together, one with many stands on its own.
/// The prior of a variant is the mean over all variants, worth some cases (B. Efron, C. Morris 1975,
/// JASA 70:311-319, for the idea of shrinkage).
/// </summary>
public static class Pooling
{
    static readonly ImmutableArray<double> Candidates = [1, 2, 4, 8, 16, 32, 64, 128, 256, 512, 1024];

    /// <summary>The share of each cause, in their order; all 0 where nobody has an opinion or a case.</summary>
    /// <param name="all">What weighs for each cause over all variants together, opinion and cases.</param>
    /// <param name="worth">How many cases the whole weighs as; see <see cref="ChooseWorth"/>.</param>
    /// <param name="cases">The variant's own cases of each cause.</param>
    /// <param name="possible">False for causes that this variant cannot have; their share is 0 and the others take it up.</param>
    public static ImmutableArray<double> ForVariant(
        ImmutableArray<double> all, double worth, ReadOnlySpan<int> cases, ReadOnlySpan<bool> possible)
    {
        (double sum, int own) = (0, 0);
        for (int c = 0; c < all.Length; c++)
            if (possible[c])
                (sum, own) = (sum + all[c], own + cases[c]);
        double[] shares = new double[all.Length];
        double total = (sum == 0 ? 0 : worth) + own;
        for (int c = 0; c < shares.Length; c++)
            if (possible[c] && total > 0)
                shares[c] = ((sum == 0 ? 0 : worth * all[c] / sum) + cases[c]) / total;
        return ImmutableCollectionsMarshal.AsImmutableArray(shares);
    }

    /// <summary>
    /// The worth (1, 2, 4, to 1,024 cases) under which each case is best foretold by the others (leave-one-out log
    /// score). Where two do equally well, or there is no case, the greater one: rather pool than trust little.
    /// </summary>
    /// <param name="belief">The author's opinion over all variants, by cause, in equivalent cases.</param>
    /// <param name="variants">Cases by cause, for each variant.</param>
    public static double ChooseWorth(
        IReadOnlyDictionary<string, double> belief, IReadOnlyList<IReadOnlyDictionary<string, int>> variants)
    {
        var totals = variants.SelectMany(v => v).GroupBy(c => c.Key, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(c => c.Value), StringComparer.Ordinal);
        double mass = belief.Values.Sum() + totals.Values.Sum();
        double Score(double worth) => variants.Sum(variant =>
        {
            int own = variant.Values.Sum();
            return variant.Where(c => c.Value > 0).Sum(c =>
            {
                // The case that is foretold has been taken out of the variant and of the whole.
                double parent = mass > 1 ? (belief.GetValueOrDefault(c.Key) + totals[c.Key] - 1) / (mass - 1) : 0;
                return c.Value * Math.Log(Math.Max(1e-12, (worth * parent + c.Value - 1) / (worth + own - 1)));
            });
        });

        return Candidates.Select(k => (Worth: k, Score: Score(k)))
            .Aggregate((best, next) => next.Score >= best.Score - 1e-12 ? next : best).Worth;
    }
}
