using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What a model says of a case: by hypothesis the priors, and the logarithms of the likelihoods of its answers.</summary>
/// <param name="Truth">The place of the true cause.</param>
/// <param name="BySigns">Of codes and symptoms.</param>
/// <param name="WithChecks">Of the outcomes of checks as well.</param>
public sealed record CaseEvidence(ImmutableArray<double> Priors, int Truth, double[] BySigns, double[] WithChecks);

/// <summary>
/// Each case as it looks to a model that has not seen it. That is what fitting anew without the case says (<see cref="ModelFit"/>),
/// without the work of causes times signs for every case: of a thousand codes that a scan looked for, most are not stated for the
/// cause of a case and in none of its cases, and what they say is the same for each such case but under its own cause.
/// </summary>
public sealed class UnseenCases
{
    readonly RankingModel authored;
    readonly ImmutableArray<double> priors;
    readonly CaseCounts counts;
    readonly FitBasis basis;
    readonly ModelIndex index;
    readonly ImmutableArray<SignUnit> units;
    readonly Dictionary<string, int> unitOf;
    readonly ILookup<int, int> ownOf;
    readonly ConcurrentDictionary<IReadOnlySet<string>, Lazy<AbsentSigns>> byAuthor = [];
    readonly ConcurrentDictionary<(IReadOnlySet<string> LookedFor, bool IsElse), Lazy<QuietUnits>> byOthers = [];

    /// <param name="authored">The model that was counted by.</param>
    /// <param name="counts">Of every case.</param>
    /// <param name="basis">Of the fit.</param>
    public UnseenCases(RankingModel authored, CaseCounts counts, FitBasis basis)
    {
        (this.authored, this.counts, this.basis) = (authored, counts, basis);
        priors = authored.Priors;
        index = new(authored);
        units = SignUnit.Of(authored);
        unitOf = units.SelectMany((u, i) => u.Members.Select(m => (m.Id, i))).ToDictionary(m => m.Id, m => m.i, StringComparer.Ordinal);
        ownOf = units.SelectMany((u, i) => u.Members.SelectMany(HaveOwn).Select(h => (Cause: h, Unit: i))).ToLookup(s => s.Cause, s => s.Unit);
    }

    int Hypotheses => authored.Hypotheses.Length;

    /// <summary>By the author's word, without any case.</summary>
    public CaseEvidence ByAuthor(SolvedCase one)
    {
        SortedSet<int> told = [.. ToldBy(one)];
        AbsentSigns absent = byAuthor.GetOrAdd(one.Answers.LookedFor, wanted => new(() => AbsentByAuthor(wanted))).Value;
        return Of(one, absent.Without(told), Part(told, one), priors);
    }

    /// <summary>By the other cases and the author's word.</summary>
    /// <param name="one">One of those that were counted.</param>
    public CaseEvidence ByOthers(SolvedCase one)
    {
        int cause = counts.PlaceOf(one);
        QuietUnits quiet = byOthers.GetOrAdd((one.Answers.LookedFor, cause == Hypotheses - 1), key => new(() => QuietFor(key.LookedFor, key.IsElse))).Value;
        SortedSet<int> apart = [.. ToldBy(one), .. ownOf[cause], .. quiet.Loud];
        double own = quiet.Own(cause, apart);
        double[] logs = quiet.Absent.Without(apart);
        logs[cause] = own;
        CaseCounts others = counts.Without(one);
        return Of(one, logs, ModelFit.MoveSigns(Part(apart, one), others, basis), ModelFit.Priors(priors, others));
    }

    /// <param name="logs">Of all that the part leaves out.</param>
    CaseEvidence Of(SolvedCase one, double[] logs, RankingModel part, ImmutableArray<double> priors)
    {
        EvidenceTerms.Add(SignUnit.Of(part).SelectMany(u => EvidenceTerms.Of(u, one.Answers)), logs);
        double[] withChecks = [.. logs];
        EvidenceTerms.Add(EvidenceTerms.OfChecks(part, one.Answers), withChecks);
        return new(priors, counts.PlaceOf(one), logs, withChecks);
    }

    RankingModel Part(IEnumerable<int> some, SolvedCase one) =>
        index.Part(some.SelectMany(u => units[u].Members).Select(m => m.Id), one.Answers.Outcomes.Keys);

    IEnumerable<int> ToldBy(SolvedCase one) => one.Answers.Findings.Keys.Where(unitOf.ContainsKey).Select(f => unitOf[f]);

    /// <summary>Causes under which a finding does not have the likelihood of their kind.</summary>
    IEnumerable<int> HaveOwn(Finding finding) =>
        // Of something else a likelihood is stated, but it is moved as a stray one is.
        finding.Stated.Where(h => !finding.OthersAreStrays || h < Hypotheses - 1).Concat(counts.Of(finding.Id).Tally.Places);

    AbsentSigns AbsentByAuthor(IReadOnlySet<string> wanted)
    {
        Answers nothing = Answers.Nothing with { LookedFor = wanted };
        return new([.. units.Select(u => EvidenceTerms.Of(u, nothing).ToImmutableArray())], Hypotheses);
    }

    QuietUnits QuietFor(IReadOnlySet<string> wanted, bool isElse) => new(
        counts.Kinds,
        [.. units.Select(u => (u.Group, (ImmutableArray<Finding>)[.. u.Members.Where(m => wanted.Contains(m.Id))]))],
        finding => new(finding, counts.Of(finding.Id), basis, isElse));
}
