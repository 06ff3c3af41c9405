using System.Collections.Immutable;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;
using Setup = GuideGen.Diagnosis.Setup;

namespace GuideGen.Site.Trees;

/// <summary>
/// Checks and questions of a tree as if they were sure, so that the best order can be computed. A cause that a check
/// finds only sometimes stands for two: vehicles in which everything shows it, and hidden ones in which only the sure
/// checks do. 'Something else' is one of the causes, so that no fault is taken for found by being the only one left.
/// </summary>
sealed class FaultSplit
{
    /// <summary>
    /// What a step or preparation with a grave hazard counts more, so that it comes last where there is another way.
    /// Common practice, no source for the figure.
    /// </summary>
    public const double GraveMinutes = 600;

    const string Hidden = "~hidden";

    // From these shares on a check is taken to find a cause for sure, or sometimes. From memory, no source.
    const double Sure = 0.8, Sometimes = 0.2;

    readonly GuideContent guide;
    readonly ImmutableArray<string> hypotheses;

    public FaultSplit(GuideContent guide, GuideWeights weights, IReadOnlyList<WeightedCause> causes, ImmutableArray<Candidate> candidates)
    {
        this.guide = guide;
        Candidates = candidates;
        hypotheses = [.. weights.Fitted.Hypotheses.Select(h => h.Id)];
        ImmutableArray<WeightedCause> all = [.. causes.SelectMany(Parts)];
        Problem = new SplitProblem(
            all,
            [.. candidates.Select(c => AsSure(c, all))],
            [.. weights.Fitted.Setups.Select(s => new Setup(s.Id, WithHazards(s.Effort, SetupHazards(s.Id))))],
            new CostScale(1, 60 / Math.Max(1, guide.Vehicle.WorkshopRate.Value)));
    }

    public ImmutableArray<Candidate> Candidates { get; }

    /// <summary>Minutes count as they are; money as the time that a workshop sells for it.</summary>
    public SplitProblem Problem { get; }

    /// <summary>The faults among the causes of a plan, hidden or not; 'something else' is none.</summary>
    public static ImmutableArray<string> FaultsOf(IEnumerable<string> causes) =>
        [.. causes.Select(c => c.Replace(Hidden, "", StringComparison.Ordinal)).Where(c => c != WeightedCause.SomethingElse).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>What the candidate shows when it finds nothing.</summary>
    public static string ClearOutcome(Candidate candidate)
    {
        var neutral = candidate.Outcomes.Where(o => o.Value.PointsTo.IsEmpty).Select(o => o.Key.Value).ToHashSet();
        return candidate.Check.Outcomes.OrderByDescending(o => neutral.Contains(o.Id)).ThenByDescending(o => Math.Round(o.Likelihoods[^1], 12)).ThenBy(o => o.Id, StringComparer.Ordinal).First().Id;
    }

    IEnumerable<WeightedCause> Parts(WeightedCause cause)
    {
        var sometimes = Candidates.Select(c => Finds(c, cause.Id).Chance).Where(q => q is >= Sometimes and < Sure).DefaultIfEmpty(1).Max();
        yield return cause with { Probability = cause.Probability * sometimes };
        if (sometimes < 1) yield return new WeightedCause(cause.Id + Hidden, cause.Probability * (1 - sometimes));
    }

    SplitCheck AsSure(Candidate candidate, ImmutableArray<WeightedCause> causes) => new(
        candidate.Check.Id,
        WithHazards(candidate.Check.Effort, candidate.Hazards),
        [.. causes.Select(c => Shows(candidate, c.Id))],
        candidate.Check.Setups,
        candidate.Check.Tools);

    string Shows(Candidate candidate, string cause)
    {
        var isHidden = cause.EndsWith(Hidden, StringComparison.Ordinal);
        var (outcome, chance) = Finds(candidate, isHidden ? cause[..^Hidden.Length] : cause);
        return chance >= (isHidden ? Sure : Sometimes) ? outcome : ClearOutcome(candidate);
    }

    /// <summary>The likeliest outcome that speaks for the cause.</summary>
    (string Outcome, double Chance) Finds(Candidate candidate, string cause)
    {
        var index = hypotheses.IndexOf(cause);
        return candidate.Outcomes.Where(o => o.Value.PointsTo.Any(f => f.Value == cause))
            .Select(o => (o.Key.Value, candidate.Check.Outcomes.First(x => x.Id == o.Key.Value).Likelihoods[index]))
            .OrderByDescending(o => o.Item2).ThenBy(o => o.Value, StringComparer.Ordinal).FirstOrDefault(("", 0));
    }

    IEnumerable<string> SetupHazards(string setup) => guide.Vehicle.Setups.First(s => s.Key.Value == setup).Value.Hazards.Select(h => h.Value);

    Effort WithHazards(Effort effort, IEnumerable<string> hazards) =>
        hazards.Any(h => guide.Hazards[h].IsGrave) ? effort with { Minutes = effort.Minutes + GraveMinutes } : effort;
}
