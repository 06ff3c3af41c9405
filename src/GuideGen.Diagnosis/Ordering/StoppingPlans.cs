using System.Collections.Immutable;
using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Ordering;

public static class StoppingPlans
{
    /// <summary>Outcome histories that are looked at; each check multiplies them by its outcomes plus one.</summary>
    public const int MostHistories = 200_000;

    /// <summary>
    /// The plan of least cost. With more checks than <see cref="MostHistories"/> allows, those with the most
    /// information per cost are kept and the others named.
    /// </summary>
    public static StoppingPlan Best(StoppingProblem problem)
    {
        ImmutableArray<UncertainCheck> kept = Keep(problem);
        StoppingSearch search = new(problem with { Checks = kept });
        return search.Plan([
            .. problem.Checks.Where(c => !kept.Contains(c)).Select(c => c.Id).Order(StringComparer.Ordinal),
        ]);
    }

    static ImmutableArray<UncertainCheck> Keep(StoppingProblem problem)
    {
        double sum = problem.Causes.Sum(c => c.Probability);
        double[] prior = [.. problem.Causes.Select(c => c.Probability / sum)];
        long histories = 1;
        var kept = ImmutableArray.CreateBuilder<UncertainCheck>();
        foreach (UncertainCheck check in problem.Checks
            .OrderByDescending(c => CheckOrders.Ratio(Bits(c, prior), problem.Scale.Of(c.Effort)))
            .ThenBy(c => c.Id, StringComparer.Ordinal))
        {
            if (histories * (check.Outcomes.Length + 1) > MostHistories)
                continue;
            histories *= check.Outcomes.Length + 1;
            kept.Add(check);
        }

        return [.. kept.OrderBy(c => c.Id, StringComparer.Ordinal)];
    }

    static double Bits(UncertainCheck check, double[] prior)
    {
        double bits = Information.Entropy(prior);
        foreach (Outcome outcome in check.Outcomes)
        {
            double[] joint = [.. prior.Zip(outcome.Likelihoods, (p, likelihood) => p * likelihood)];
            bits -= joint.Sum() * Information.Entropy(joint);
        }

        return bits;
    }
}
