using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>An owner can answer every step: the answers differ, there is more than one, and there is a way on without any.</summary>
sealed class TreeAnswersInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Trees.All.SelectMany(t => Inspect(guide, t));

    static IEnumerable<Finding> Inspect(GuideContent guide, Tree tree)
    {
        var paths = new TreePaths(tree);
        foreach (var (name, node) in tree.Nodes)
        {
            if (node is not BranchNode branch) continue;
            if (node is AskNode { Answers.Length: 1 } ask) yield return Rules.TreeAnswerSingle.At(ask.Question.Span, name.Value, paths.To(name.Value)).Concerning(name.Value);
            foreach (var text in Repeated(guide, branch)) yield return Rules.TreeAnswerRepeated.At(name.Span, name.Value, text, paths.To(name.Value));
            if (branch.CannotTell is null && !IsCertain(guide, tree, branch)) yield return Rules.TreeCannotTell.At(name.Span, name.Value, paths.To(name.Value)).Concerning(name.Value);
        }
    }

    /// <summary>Upper and lower case and spaces do not make two answers different.</summary>
    static IEnumerable<string> Repeated(GuideContent guide, BranchNode branch) =>
        branch.Answers.Select(a => TextOf(guide, branch, a.Key.Value))
            .GroupBy(t => string.Join(' ', t.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparer.OrdinalIgnoreCase)
            .Where(g => g.Count() > 1).Select(g => g.Last());

    static string TextOf(GuideContent guide, BranchNode branch, string answer) => branch is DoNode step
        ? guide.Checks.Find(step.Check.Value)?.Outcomes.FirstOrDefault(o => o.Key.Value == answer).Value?.Name.Value ?? answer
        : answer;

    static bool IsCertain(GuideContent guide, Tree tree, BranchNode branch) =>
        branch is AskNode ask && (ask.IsCertain || VariantAnswers.Of(guide.Vehicle, tree, ask) is not null);
}
