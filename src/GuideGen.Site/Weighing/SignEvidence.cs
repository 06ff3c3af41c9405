using System.Collections.Immutable;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Weighing;

/// <summary>What the cases with one code or symptom say of its causes.</summary>
/// <param name="Reports">The cases behind every share, newest first: proved, confirmed and refuted ones.</param>
/// <param name="Variants">The same of each variant that has cases, by its slug.</param>
/// <param name="Vain">What did not help.</param>
public sealed record SignEvidence(
    EvidenceSummary Summary,
    ImmutableArray<SolvedCase> Reports,
    ImmutableArray<KeyValuePair<string, EvidenceSummary>> Variants,
    ImmutableArray<VainAttempt> Vain);

/// <summary>What the cases of one fault say of it.</summary>
/// <param name="ByLevel">Cases by level of proof, indexed 0 to 4.</param>
/// <param name="Minutes">Own work in all, of the cases that count; null where none says it.</param>
/// <param name="Spend">Money in all, in the guide's currency, of the cases that count; null where none says it.</param>
/// <param name="Vain">What did not help.</param>
public sealed record FaultEvidence(
    ImmutableArray<int> ByLevel, MedianOfReports? Minutes, MedianOfReports? Spend, ImmutableArray<VainAttempt> Vain)
{
    public int Cases => ByLevel.Sum();
}
