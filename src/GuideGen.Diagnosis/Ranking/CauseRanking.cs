using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What one finding, group or check did for a cause.</summary>
/// <param name="Source">Id of the finding, the group with a joint table, or the check.</param>
/// <param name="Log10">
/// log10 of the likelihood ratio against the rival: the best other hypothesis. +1 makes the cause ten times as
/// likely against it, negative values speak for the rival.
/// </param>
public sealed record EvidenceWeight(string Source, double Log10);

public sealed record RankedCause(string Id, double Probability, ImmutableArray<EvidenceWeight> Weights);

/// <summary>
/// Causes by probability, 'something else' among them; equal ones by id. One fault at a time and independent
/// findings are assumed (naive Bayes, T. Mitchell 1997, Machine Learning, 6.9). The order often survives when the
/// findings do depend on each other, the probabilities then do not (P. Domingos, M. Pazzani 1997, Mach. Learn.
/// 29:103-130); <see cref="FindingGroup"/> is there for the known cases.
/// </summary>
public sealed record CauseRanking(ImmutableArray<RankedCause> Causes)
{
    public static CauseRanking Of(RankingModel model, Answers answers)
    {
        ImmutableArray<EvidenceTerm> terms = EvidenceTerms.Of(model, answers);
        double[] posterior = Posterior(model, terms);
        int[] order = Order(model, posterior);
        return new([.. order.Select(h => Line(h, Rival(h)))]);

        int Rival(int h) => order.Length == 1 ? h : order[0] == h ? order[1] : order[0];

        RankedCause Line(int h, int rival) => new(
            model.Hypotheses[h].Id,
            posterior[h],
            [.. terms.Select(t => new EvidenceWeight(t.Source, (t.Logs[h] - t.Logs[rival]) / Math.Log(10)))]);
    }

    /// <summary>Probabilities in the order of the model's hypotheses, without what speaks for them.</summary>
    public static ImmutableArray<double> Probabilities(RankingModel model, Answers answers) =>
        [.. Posterior(model, EvidenceTerms.Of(model, answers))];

    public double ProbabilityOf(string id) => Causes.Single(c => c.Id == id).Probability;

    /// <summary>Indices of the hypotheses, the likeliest first, equal ones by id.</summary>
    static int[] Order(RankingModel model, double[] posterior) =>
    [
        .. Enumerable.Range(0, posterior.Length)
            .OrderByDescending(h => posterior[h]).ThenBy(h => model.Hypotheses[h].Id, StringComparer.Ordinal),
    ];

    /// <summary>True where one hypothesis stands before another in that order.</summary>
    internal static bool IsBefore(RankingModel model, double[] posterior, int one, int other) =>
        posterior[one] > posterior[other]
        || (posterior[one] == posterior[other] && string.CompareOrdinal(model.Hypotheses[one].Id, model.Hypotheses[other].Id) < 0);

    /// <summary>Probabilities in the order of the model's hypotheses.</summary>
    internal static double[] Posterior(RankingModel model, ImmutableArray<EvidenceTerm> terms) =>
        Posterior(model.Priors, EvidenceTerms.Sum(terms, model.Hypotheses.Length));

    /// <param name="priors">By hypothesis.</param>
    /// <param name="logs">Of the likelihoods of all answers together, by hypothesis.</param>
    internal static double[] Posterior(ImmutableArray<double> priors, double[] logs)
    {
        double[] values = new double[logs.Length];
        for (int h = 0; h < values.Length; h++)
            values[h] = logs[h] + Math.Log(priors[h]);
        double top = values.Max();
        foreach (ref double value in values.AsSpan())
            value = Math.Exp(value - top);
        double sum = values.Sum();
        foreach (ref double value in values.AsSpan())
            value /= sum;
        return values;
    }
}
