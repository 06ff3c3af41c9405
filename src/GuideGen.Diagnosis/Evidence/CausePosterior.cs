using System.Collections.Immutable;
using GuideGen.Diagnosis.Numerics;

namespace GuideGen.Diagnosis.Evidence;

/// <summary>One cause: the author's opinion in equivalent cases, and the cases that count.</summary>
/// <param name="Id">The cause.</param>
/// <param name="Belief">The author's opinion, worth this many cases; 0 or more.</param>
/// <param name="Cases">Confirmed cases; 0 or more.</param>
public sealed record CauseCount(string Id, double Belief, int Cases);

/// <summary>
/// The shares of all causes together: a Dirichlet posterior whose prior is the author's opinion
/// (A. Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., 3.4). Opinion and cases stay apart, so both can be shown.
/// A cause with neither belief nor cases has the share 0, as when the variant lacks the part.
/// </summary>
public sealed class CausePosterior
{
    readonly Dictionary<string, CauseCount> byId;

    public CausePosterior(IEnumerable<CauseCount> causes)
    {
        Causes = [.. causes];
        foreach (CauseCount cause in Causes)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(cause.Belief);
            ArgumentOutOfRangeException.ThrowIfNegative(cause.Cases);
        }

        byId = Causes.ToDictionary(c => c.Id, StringComparer.Ordinal);
        Worth = Causes.Sum(c => c.Belief);
        Cases = Causes.Sum(c => c.Cases);
    }

    public ImmutableArray<CauseCount> Causes { get; }

    /// <summary>How many cases the author's opinion weighs as, over all causes.</summary>
    public double Worth { get; }

    public int Cases { get; }

    /// <summary>Prior from shares that sum to 1, together worth <paramref name="worth"/> cases, and the cases found.</summary>
    public static CausePosterior FromShares(
        IEnumerable<KeyValuePair<string, double>> shares, double worth, IReadOnlyDictionary<string, int> cases)
    {
        ImmutableArray<KeyValuePair<string, double>> all = [.. shares];
        if (Math.Abs(all.Sum(s => s.Value) - 1) > 1e-9)
            throw new ArgumentException("The shares of all causes sum to 1.", nameof(shares));
        return new(all.Select(s => new CauseCount(s.Key, s.Value * worth, cases.GetValueOrDefault(s.Key))));
    }

    /// <summary>Expected share of the cause; 0 when nobody has an opinion or a case.</summary>
    public double Mean(string id) => Worth + Cases == 0 ? 0 : Weight(id) / (Worth + Cases);

    /// <summary>What opinion and cases together say of one cause; null when its share is exactly 0 or 1.</summary>
    public BetaDistribution? Share(string id) => Beta(Weight(id), Worth + Cases);

    /// <summary>What the author's opinion alone says; null when its share is exactly 0 or 1.</summary>
    public BetaDistribution? Opinion(string id) => Beta(byId[id].Belief, Worth);

    /// <summary>
    /// Probability that the first cause is more frequent than the second: 1 - I_0.5(a, b), exact because the ratio
    /// of one share to the sum of both is Beta(a, b). Two causes without belief or cases are even, 0.5.
    /// </summary>
    public double ChanceAbove(string first, string second)
    {
        double a = Weight(first), b = Weight(second);
        if (a == 0 || b == 0)
            return a > b ? 1 : b > a ? 0 : 0.5;
        return 1 - SpecialFunctions.RegularisedBeta(0.5, a, b);
    }

    double Weight(string id) => byId[id].Belief + byId[id].Cases;

    static BetaDistribution? Beta(double part, double whole) =>
        part > 0 && part < whole ? new(part, whole - part) : null;
}
