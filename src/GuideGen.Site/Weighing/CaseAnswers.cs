using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Proof;
using GuideGen.Diagnosis.Ranking;
using SolvedCase = GuideGen.Guide.Model.SolvedCase;

namespace GuideGen.Site.Weighing;

/// <summary>A case as the ranking sees it.</summary>
static class CaseAnswers
{
    /// <summary>A refuted case stands for something else; one that is only claimed or probable says nothing: null.</summary>
    public static Diagnosis.Ranking.SolvedCase? Of(SolvedCase solved, ProofLevel level, ImmutableArray<TroubleCode> codes) => level switch
    {
        ProofLevel.Refuted => new(solved.Origin.Slug, WeightedCause.SomethingElse, AnswersOf(solved, codes)),
        _ when level.Counts() => new(solved.Origin.Slug, solved.Found.Value, AnswersOf(solved, codes)),
        _ => null,
    };

    static Answers AnswersOf(SolvedCase solved, ImmutableArray<TroubleCode> codes)
    {
        var present = solved.Codes.Select(c => c.Key.Value).ToHashSet();
        IEnumerable<KeyValuePair<string, bool>> findings =
        [
            .. codes.Where(solved.WasRead).Select(c => KeyValuePair.Create(c.ToString(), present.Contains(c))),
            .. solved.Symptoms.Present.Select(s => KeyValuePair.Create(s.Value, true)),
            .. solved.Symptoms.Absent.Select(s => KeyValuePair.Create(s.Value, false)),
        ];
        return new Answers(
            ImmutableDictionary.CreateRange(StringComparer.Ordinal, findings.DistinctBy(f => f.Key)),
            solved.Checks.ToImmutableDictionary(c => c.Key.Value, c => c.Value.Value, StringComparer.Ordinal));
    }
}
