using System.Collections.Immutable;

namespace GuideGen.Diagnosis;

/// <summary>What an author says of one outcome of a check.</summary>
/// <param name="Id">The outcome.</param>
/// <param name="PointsTo">Causes it speaks for.</param>
/// <param name="RulesOut">Causes it speaks against.</param>
/// <param name="Chances">Stated likelihoods of this outcome by cause, 0 to 1.</param>
public sealed record StatedOutcome(
    string Id,
    ImmutableArray<string> PointsTo,
    ImmutableArray<string> RulesOut,
    ImmutableDictionary<string, double> Chances);

/// <summary>From 'points to' and 'rules out' to likelihoods; a stated chance always wins.</summary>
public static class StatedOutcomes
{
    // Parts that an outcome gets when no chance is stated. Common practice, no source: a check made for a cause shows
    // it about nine times in ten, and a vehicle with another cause looks sound about nine times in ten.
    const double PointsHere = 18, RulesOutHere = 1, PointsElsewhere = 1, NeutralWherePointed = 2, Neutral = 9;

    /// <summary>Likelihoods of each outcome, by the places of the causes; for each cause they sum to 1.</summary>
    /// <param name="causes">The place of each cause.</param>
    public static ImmutableArray<Outcome> Likelihoods(
        ImmutableArray<StatedOutcome> outcomes, IReadOnlyDictionary<string, int> causes)
    {
        double[] unnamed = Column(outcomes, "");
        (int Place, double[] Column)[] named =
        [
            .. outcomes.SelectMany(o => o.PointsTo.Concat(o.RulesOut).Concat(o.Chances.Keys)).Distinct()
                .Where(causes.ContainsKey).Select(cause => (causes[cause], Column(outcomes, cause))),
        ];
        return [.. outcomes.Select((o, i) => new Outcome(o.Id, LikelihoodRow.Of(causes.Count, unnamed[i], named.Select(n => (n.Place, n.Column[i])))))];
    }

    static double[] Column(ImmutableArray<StatedOutcome> outcomes, string cause)
    {
        bool pointed = outcomes.Any(o => o.PointsTo.Contains(cause));
        double stated = outcomes.Sum(o => o.Chances.GetValueOrDefault(cause));
        double parts = outcomes.Where(o => !o.Chances.ContainsKey(cause)).Sum(o => Part(o, cause, pointed));
        double rest = Math.Max(0, 1 - stated);
        double[] column =
        [
            .. outcomes.Select(o => o.Chances.TryGetValue(cause, out double chance)
                ? chance
                : rest * Part(o, cause, pointed) / parts),
        ];
        double sum = column.Sum();
        return [.. column.Select(v => sum > 0 ? v / sum : 1.0 / column.Length)];
    }

    static double Part(StatedOutcome outcome, string cause, bool pointed)
    {
        if (outcome.PointsTo.Contains(cause))
            return PointsHere;
        if (outcome.RulesOut.Contains(cause))
            return RulesOutHere;
        if (!outcome.PointsTo.IsEmpty)
            return PointsElsewhere;
        return pointed ? NeutralWherePointed : Neutral;
    }
}
