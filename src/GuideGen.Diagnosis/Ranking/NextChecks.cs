using System.Collections.Immutable;
using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What one outcome of a check would do.</summary>
/// <param name="Id">The outcome.</param>
/// <param name="Probability">How likely it is, given what is known.</param>
/// <param name="After">The causes as they would then rank.</param>
public sealed record OutcomeEffect(string Id, double Probability, ImmutableArray<WeightedCause> After);

/// <param name="Check">The check.</param>
/// <param name="Minutes">With those preparations that have not been made yet.</param>
/// <param name="Bits">How much doubt it takes away on average.</param>
/// <param name="BitsPerMinute">What the list is sorted by; minutes count as at least <see cref="NextChecks.LeastMinutes"/>.</param>
/// <param name="Outcomes">In the order of the check.</param>
public sealed record NextCheck(
    string Check, double Minutes, double Bits, double BitsPerMinute, ImmutableArray<OutcomeEffect> Outcomes);

/// <summary>Which check to do next: the one that takes away most doubt per minute.</summary>
public static class NextChecks
{
    /// <summary>A check said to take no time would be worth any number of others.</summary>
    public const double LeastMinutes = 0.1;

    /// <param name="model">The model.</param>
    /// <param name="answers">What is known; checks with an outcome are not proposed again.</param>
    /// <param name="missingTools">Tools that are not at hand.</param>
    /// <param name="setupsDone">Preparations already made.</param>
    /// <returns>Best first; equal ones by id.</returns>
    public static ImmutableArray<NextCheck> Of(
        RankingModel model, Answers answers, IReadOnlySet<string> missingTools, IReadOnlySet<string> setupsDone)
    {
        double[] now = CauseRanking.Posterior(model, EvidenceTerms.Of(model, answers));
        Dictionary<string, double> setups = model.Setups.Where(s => !setupsDone.Contains(s.Id))
            .ToDictionary(s => s.Id, s => s.Effort.Minutes, StringComparer.Ordinal);
        return
        [
            .. model.Checks.Without(missingTools).Where(c => !answers.Outcomes.ContainsKey(c.Id))
                .Select(c => Weigh(model, c, now, c.Effort.Minutes + c.Setups.Sum(s => setups.GetValueOrDefault(s))))
                .OrderByDescending(n => Math.Round(n.BitsPerMinute, 12)).ThenBy(n => n.Check, StringComparer.Ordinal),
        ];
    }

    static NextCheck Weigh(RankingModel model, UncertainCheck check, double[] now, double minutes)
    {
        double bits = Information.Entropy(now);
        var effects = ImmutableArray.CreateBuilder<OutcomeEffect>(check.Outcomes.Length);
        foreach (Outcome outcome in check.Outcomes)
        {
            double[] joint = [.. now.Zip(outcome.Likelihoods, (p, likelihood) => p * likelihood)];
            double chance = joint.Sum();
            double[] after = [.. joint.Select(j => j / chance)];
            bits -= chance * Information.Entropy(after);
            effects.Add(new(outcome.Id, chance, Sorted(model, after)));
        }

        bits = Math.Max(0, bits);
        return new(check.Id, minutes, bits, bits / Math.Max(minutes, LeastMinutes), effects.MoveToImmutable());
    }

    static ImmutableArray<WeightedCause> Sorted(RankingModel model, double[] posterior) =>
    [
        .. posterior.Select((p, h) => new WeightedCause(model.Hypotheses[h].Id, p))
            .OrderByDescending(c => c.Probability).ThenBy(c => c.Id, StringComparer.Ordinal),
    ];
}
