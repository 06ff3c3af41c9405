using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// How faults set a finding on their own: P(absent | faults) = (1 - leak) * product of (1 - link) over the faults.
/// </summary>
/// <param name="Id">The finding.</param>
/// <param name="Leak">How likely the finding is with none of the faults.</param>
/// <param name="Links">For each fault, how likely it alone sets the finding, the leak not included.</param>
public sealed record NoisyOrFinding(string Id, double Leak, ImmutableArray<double> Links);

/// <summary>Faults that are there together; an empty set is 'none of these, the leak did it'.</summary>
public sealed record FaultSet(ImmutableArray<string> Faults, double Probability);

/// <summary>
/// Several faults at once: each is there or not on its own, and any can set a finding
/// (J. Pearl 1988, Probabilistic Reasoning in Intelligent Systems, 4.3).
/// </summary>
/// <param name="Causes">How probable each fault is, alone or with others; most probable first, equal ones by id.</param>
/// <param name="Likeliest">The most probable sets, at most ten.</param>
/// <param name="MostAtOnce">Sets up to this size were looked at; with fewer than all faults the numbers are cut.</param>
public sealed record NoisyOr(ImmutableArray<WeightedCause> Causes, ImmutableArray<FaultSet> Likeliest, int MostAtOnce)
{
    /// <summary>Up to here every set of faults is counted.</summary>
    public const int ExactUpTo = 18;

    const int MostBeyond = 3;

    /// <param name="faults">Each with the probability that it is there, independently of the others.</param>
    /// <param name="findings">Links in the order of <paramref name="faults"/>.</param>
    /// <param name="present">What is known of the findings; one that is not in it is unknown.</param>
    public static NoisyOr Of(
        ImmutableArray<Hypothesis> faults,
        ImmutableArray<NoisyOrFinding> findings,
        IReadOnlyDictionary<string, bool> present)
    {
        int most = faults.Length <= ExactUpTo ? faults.Length : MostBeyond;
        FaultSetWalk walk = new(faults, [.. findings.Where(f => present.ContainsKey(f.Id))], present);
        walk.Visit(most);
        return new(
            [
                .. faults.Select((f, i) => new WeightedCause(f.Id, walk.Marginal(i)))
                    .OrderByDescending(c => c.Probability).ThenBy(c => c.Id, StringComparer.Ordinal),
            ],
            walk.Likeliest(),
            most);
    }

    /// <summary>P(present) of a finding when exactly these faults are there.</summary>
    public static double Chance(NoisyOrFinding finding, IEnumerable<int> faults) =>
        1 - faults.Aggregate(1 - finding.Leak, (absent, fault) => absent * (1 - finding.Links[fault]));

    /// <summary>
    /// The link when what is known is P(present | this fault alone), leak included (M. Henrion 1989); the links here
    /// leave the leak out (F. J. Diez, M. J. Druzdzel 2006): 1 - (1 - p) / (1 - leak), never below 0.
    /// </summary>
    public static double LinkWithoutLeak(double withLeak, double leak) => Math.Max(0, 1 - (1 - withLeak) / (1 - leak));
}
