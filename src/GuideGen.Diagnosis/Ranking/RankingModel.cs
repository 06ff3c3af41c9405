using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text.Json.Serialization;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>A cause before any finding is known. Prior weights need not sum to 1; 0 rules the cause out.</summary>
public readonly record struct Hypothesis(string Id, double Prior);

/// <summary>
/// Something the owner may have noticed or read out: a code or a symptom. <paramref name="Likelihoods"/>: how likely
/// it is under each hypothesis of the model, in the model's order; the last is 'something else', its base rate.
/// </summary>
public sealed record Finding(string Id, LikelihoodRow Likelihoods)
{
    /// <summary>
    /// True where a likelihood is stated for the hypotheses that have one of their own in the row, and the others share a stray
    /// rate; false where all are stated.
    /// </summary>
    [JsonIgnore]
    public bool OthersAreStrays { get; init; }

    /// <summary>Hypotheses of which its likelihood is stated.</summary>
    internal IEnumerable<int> Stated =>
        OthersAreStrays ? Likelihoods.Places.ToArray() : Enumerable.Range(0, Likelihoods.Count);

    internal bool IsStray(int hypothesis) => OthersAreStrays && !Likelihoods.HasOwn(hypothesis);
}

/// <summary>How findings that share a root signal are kept from counting twice.</summary>
public enum GroupRule
{
    /// <summary>Only the member that tells the hypotheses apart most speaks.</summary>
    Strongest,

    /// <summary>Each of the m known members counts 1/m.</summary>
    Shared,

    /// <summary>The author states how likely each combination is.</summary>
    Joint,
}

/// <summary>
/// One combination of a joint table: a character for each member of the group, '1' present and '0' absent, with its
/// likelihood under each hypothesis.
/// </summary>
public sealed record JointRow(string Pattern, LikelihoodRow Likelihoods);

/// <summary>Findings with one root signal. A finding belongs to one group at most.</summary>
/// <param name="Id">Names the group in explanations.</param>
/// <param name="Rule">How the members count.</param>
/// <param name="Members">Ids of findings.</param>
/// <param name="Joint">With <see cref="GroupRule.Joint"/>, every one of the 2^m combinations; else empty.</param>
public sealed record FindingGroup(
    string Id, GroupRule Rule, ImmutableArray<string> Members, ImmutableArray<JointRow> Joint);

/// <summary>
/// Everything that ranks causes, the shape that the browser gets as well. Made by <see cref="Create"/>, so every
/// likelihood is bounded and the last hypothesis is <see cref="WeightedCause.SomethingElse"/>.
/// </summary>
public sealed record RankingModel
{
    /// <summary>No likelihood is taken to be nearer to 0 or to 1: no author knows that well.</summary>
    public const double Least = 0.005;

    RankingModel()
    {
    }

    public required ImmutableArray<Hypothesis> Hypotheses { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    public required ImmutableArray<FindingGroup> Groups { get; init; }

    public required ImmutableArray<UncertainCheck> Checks { get; init; }

    public required ImmutableArray<Setup> Setups { get; init; }

    /// <exception cref="ArgumentException">The parts do not fit together; the caller has to see to that.</exception>
    public static RankingModel Create(
        IEnumerable<Hypothesis> causes, double elsePrior, ModelParts parts)
    {
        ImmutableArray<Hypothesis> hypotheses = [.. causes, new(WeightedCause.SomethingElse, elsePrior)];
        ModelRules.Check(hypotheses, parts);
        return new()
        {
            Hypotheses = hypotheses,
            Findings = [.. parts.Findings.Select(f => f with { Likelihoods = Likelihood.Bound(f.Likelihoods) })],
            Groups = [.. parts.Groups.Select(g => g with { Joint = BoundJoint(g.Joint) })],
            Checks = [.. parts.Checks.Select(c => c with { Outcomes = BoundOutcomes(c.Outcomes) })],
            Setups = parts.Setups,
        };
    }

    /// <summary>In the order of the hypotheses.</summary>
    [JsonIgnore]
    public ImmutableArray<double> Priors => [.. Hypotheses.Select(h => h.Prior)];

    /// <summary>The same model for another variant or another state of the evidence, priors in the model's order.</summary>
    public RankingModel WithPriors(ImmutableArray<double> priors)
    {
        if (priors.Length != Hypotheses.Length) throw new ArgumentException("One prior for each hypothesis.", nameof(priors));
        var hypotheses = new Hypothesis[priors.Length];
        for (int h = 0; h < hypotheses.Length; h++) hypotheses[h] = new(Hypotheses[h].Id, priors[h]);
        return this with { Hypotheses = ImmutableCollectionsMarshal.AsImmutableArray(hypotheses) };
    }

    static ImmutableArray<JointRow> BoundJoint(ImmutableArray<JointRow> rows)
    {
        ImmutableArray<LikelihoodRow> bounded = Likelihood.BoundTable([.. rows.Select(r => r.Likelihoods)]);
        return [.. rows.Select((r, i) => r with { Likelihoods = bounded[i] })];
    }

    static ImmutableArray<Outcome> BoundOutcomes(ImmutableArray<Outcome> outcomes)
    {
        var bounded = Likelihood.BoundTable([.. outcomes.Select(o => o.Likelihoods)]);
        return [.. outcomes.Select((o, i) => o with { Likelihoods = bounded[i] })];
    }
}

/// <summary>What a model is made of besides its hypotheses.</summary>
public sealed record ModelParts
{
    public ImmutableArray<Finding> Findings { get; init; } = [];

    public ImmutableArray<FindingGroup> Groups { get; init; } = [];

    public ImmutableArray<UncertainCheck> Checks { get; init; } = [];

    public ImmutableArray<Setup> Setups { get; init; } = [];
}
