using System.Collections.Immutable;
using GuideGen.Diagnosis;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Weighing;
using Outcome = GuideGen.Guide.Model.Outcome;

namespace GuideGen.Site.Trees;

/// <summary>A check or a question that a tree can be built from.</summary>
/// <param name="Check">In numbers; its id is 'do' or 'ask' with the name, which cannot be mistaken for each other.</param>
/// <param name="Outcomes">As the author states them.</param>
/// <param name="Hazards">Those of the check itself.</param>
/// <param name="Source">The check, or null for a question.</param>
/// <param name="Question">The question, or null for a check.</param>
sealed record Candidate(
    UncertainCheck Check,
    ImmutableArray<KeyValuePair<Located<string>, Outcome>> Outcomes,
    ImmutableArray<string> Hazards,
    Check? Source,
    TreeQuestion? Question)
{
    public static Candidate Of(Check check, GuideWeights weights) => new(
        weights.Fitted.Checks.First(c => c.Id == check.Origin.Slug) with { Id = "do-" + check.Origin.Slug },
        check.Outcomes,
        [.. check.Hazards.Select(h => h.Value)],
        check,
        null);

    public static Candidate Of(string name, TreeQuestion question, GuideWeights weights) => new(
        new UncertainCheck(
            "ask-" + name,
            new Effort(question.Minutes?.Value ?? StepNeeds.MinutesToAnswer),
            StatedOutcomes.Likelihoods([.. question.Answers.Select(a => Stated(a.Key.Value, a.Value))], weights.Places),
            [],
            []),
        question.Answers,
        [],
        null,
        question);

    static StatedOutcome Stated(string id, Outcome outcome) => new(
        id,
        [.. outcome.PointsTo.Select(f => f.Value)],
        [.. outcome.RulesOut.Select(f => f.Value)],
        outcome.Chance.ToImmutableDictionary(c => c.Key.Value, c => c.Value.Value.Value));
}
