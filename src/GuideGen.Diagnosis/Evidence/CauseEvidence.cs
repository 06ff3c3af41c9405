using System.Collections.Immutable;
using GuideGen.Diagnosis.Proof;

namespace GuideGen.Diagnosis.Evidence;

/// <summary>A case as evidence: the cause that it names, and how well it is proved.</summary>
public sealed record CaseOfCause(string Cause, ProofLevel Level);

/// <summary>What the cases say of one cause among the causes of a code, a symptom or a variant.</summary>
/// <param name="Id">The cause.</param>
/// <param name="ByLevel">Cases by level, indexed 0 to 4.</param>
/// <param name="Reports">Confirmed cases of this cause among all that count.</param>
/// <param name="Share">Wilson's interval for it; null without reports.</param>
/// <param name="Mean">Expected share from opinion and cases together.</param>
/// <param name="Opinion">The author's opinion alone; null when there is none.</param>
/// <param name="Posterior">Opinion and cases together; null when the share is exactly 0 or 1.</param>
/// <param name="Wording">How the share may be put into words.</param>
/// <param name="AboveNext">P(more frequent than the next cause in the list); null for the last one.</param>
public sealed record CauseEvidence(
    string Id,
    ImmutableArray<int> ByLevel,
    Proportion Reports,
    Interval? Share,
    double Mean,
    BetaDistribution? Opinion,
    BetaDistribution? Posterior,
    ShareWording Wording,
    double? AboveNext);

/// <summary>The causes of one code, symptom or variant, most frequent first.</summary>
public sealed record EvidenceSummary(ImmutableArray<CauseEvidence> Causes, CausePosterior Posterior)
{
    /// <summary>
    /// Counts the cases. A refuted case is a case of something else: it stands in the total and against its cause.
    /// So does a confirmed case of a cause that is not in <paramref name="beliefs"/>.
    /// </summary>
    /// <param name="beliefs">The author's opinion by cause in equivalent cases; 0 where there is none.</param>
    /// <param name="elseBelief">Opinion about something else, in equivalent cases.</param>
    /// <param name="cases">The cases, duplicates already taken out.</param>
    /// <param name="confidence">Of the intervals.</param>
    public static EvidenceSummary Of(
        IReadOnlyDictionary<string, double> beliefs,
        double elseBelief,
        IReadOnlyCollection<CaseOfCause> cases,
        double confidence = 0.95)
    {
        var levels = cases.ToLookup(c => beliefs.ContainsKey(c.Cause) ? c.Cause : WeightedCause.SomethingElse, StringComparer.Ordinal);
        int refuted = cases.Count(c => c.Level == ProofLevel.Refuted);
        int Counting(string id) => levels[id].Count(c => c.Level.Counts());
        var known = beliefs.Select(b => new CauseCount(b.Key, b.Value, Counting(b.Key)));
        // A refuted case of an unknown cause is still one case of something else, not two.
        CausePosterior posterior =
            new([.. known, new CauseCount(WeightedCause.SomethingElse, elseBelief, Counting(WeightedCause.SomethingElse) + refuted)]);
        ImmutableArray<string> order =
        [
            .. posterior.Causes.Select(c => c.Id)
                .OrderByDescending(posterior.Mean).ThenBy(id => id, StringComparer.Ordinal),
        ];
        return new([.. order.Select((id, i) => Line(id, i + 1 < order.Length ? order[i + 1] : null))], posterior);

        CauseEvidence Line(string id, string? next)
        {
            CauseCount count = posterior.Causes.Single(c => c.Id == id);
            Proportion reports = new(count.Cases, posterior.Cases);
            return new(
                id,
                [.. Enumerable.Range(0, 5).Select(level => levels[id].Count(c => (int)c.Level == level))],
                reports,
                reports.Interval(confidence),
                posterior.Mean(id),
                posterior.Opinion(id),
                posterior.Share(id),
                Evidence.Wording.Of(reports, count.Belief > 0),
                next is null ? null : posterior.ChanceAbove(id, next));
        }
    }
}
