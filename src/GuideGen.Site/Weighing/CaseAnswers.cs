using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Proof;
using GuideGen.Diagnosis.Ranking;
using CodeScan = GuideGen.Guide.Model.CodeScan;
using SolvedCase = GuideGen.Guide.Model.SolvedCase;

namespace GuideGen.Site.Weighing;

/// <summary>Cases as the ranking sees them.</summary>
/// <param name="codes">All that the guide names.</param>
sealed class CaseAnswers(ImmutableArray<TroubleCode> codes)
{
    /// <summary>What a scan tells either way. A code that is stated without one is told because it was there.</summary>
    readonly FrozenDictionary<CodeScan, FrozenSet<string>> scanned = new Dictionary<CodeScan, FrozenSet<string>>
    {
        [CodeScan.Unknown] = [],
        [CodeScan.Engine] = codes.Where(c => c.Letter == 'P').Select(c => c.ToString()).ToFrozenSet(StringComparer.Ordinal),
        [CodeScan.All] = codes.Select(c => c.ToString()).ToFrozenSet(StringComparer.Ordinal),
    }.ToFrozenDictionary();

    /// <summary>A refuted case stands for something else; one that is only claimed or probable says nothing: null.</summary>
    public Diagnosis.Ranking.SolvedCase? Of(SolvedCase solved, ProofLevel level) => level switch
    {
        ProofLevel.Refuted => Of(solved, WeightedCause.SomethingElse),
        _ when level.Counts() => Of(solved, solved.Found.Value),
        _ => null,
    };

    Diagnosis.Ranking.SolvedCase Of(SolvedCase solved, string cause) => new(solved.Origin.Slug, cause, AnswersOf(solved));

    Answers AnswersOf(SolvedCase solved)
    {
        IEnumerable<KeyValuePair<string, bool>> findings =
        [
            .. solved.Codes.Select(c => KeyValuePair.Create(c.Key.Value.ToString(), true)),
            .. solved.Symptoms.Present.Select(s => KeyValuePair.Create(s.Value, true)),
            .. solved.Symptoms.Absent.Select(s => KeyValuePair.Create(s.Value, false)),
        ];
        return new Answers(
            ImmutableDictionary.CreateRange(StringComparer.Ordinal, findings.DistinctBy(f => f.Key)),
            solved.Checks.ToImmutableDictionary(c => c.Key.Value, c => c.Value.Value, StringComparer.Ordinal))
        {
            LookedFor = scanned[solved.Scan],
        };
    }
}
