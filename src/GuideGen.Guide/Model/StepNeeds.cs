using System.Collections.Immutable;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What a step of a tree takes, where that is not what its check says.</summary>
/// <param name="Minutes">In place of the check's; a question takes <see cref="MinutesToAnswer"/>.</param>
/// <param name="Money">In place of the check's.</param>
/// <param name="Setup">Preparation on top of the check's, counted once on a path.</param>
/// <param name="Tools">Tools on top of the check's.</param>
public sealed record StepNeeds(
    Located<double>? Minutes,
    Located<double>? Money,
    ImmutableArray<Located<string>> Setup,
    ImmutableArray<Located<string>> Tools)
{
    /// <summary>To read a question and answer it. Common practice, no source.</summary>
    public const double MinutesToAnswer = 0.5;

    public static StepNeeds None { get; } = new(null, null, [], []);

    public double MinutesOf(Check? check) => Minutes?.Value ?? check?.Minutes.Value ?? MinutesToAnswer;

    public double MoneyOf(Check? check) => Money?.Value ?? check?.Money?.Value ?? 0;

    public IEnumerable<Located<string>> SetupOf(Check? check) => (check?.Setup ?? []).Concat(Setup).DistinctBy(s => s.Value);

    public IEnumerable<Located<string>> ToolsOf(Check? check) => (check?.Tools ?? []).Concat(Tools).DistinctBy(t => t.Value);
}
