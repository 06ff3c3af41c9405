using System.Collections.Immutable;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Guide;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Trees;

/// <summary>From plans to the steps of a tree. Plans that agree from some step on share it.</summary>
sealed class TreeBuilder(ComputedOrder order)
{
    readonly Dictionary<string, string> names = new(StringComparer.Ordinal);
    readonly HashSet<string> taken = new(StringComparer.Ordinal);
    readonly List<KeyValuePair<Located<string>, TreeNode>> nodes = [];

    public ImmutableArray<KeyValuePair<Located<string>, TreeNode>> Nodes => [.. nodes];

    /// <returns>The name of the first step of the plan.</returns>
    /// <param name="split">What the plan was made for.</param>
    /// <param name="depth">Steps before it.</param>
    public string Add(FaultSplit split, PlanNode plan, int depth)
    {
        var left = CausesBelow(plan);
        var faults = FaultSplit.FaultsOf(left);
        if (faults is [var fault] && left.All(c => FaultSplit.FaultsOf([c]).Length == 1)) return AddFault(fault);
        return plan is PlanStep step && depth < GuideLimits.StepsOfWalk ? AddStep(split, step, depth) : AddAdvice(faults);
    }

    public string AddQuestion(Located<string> question, IEnumerable<KeyValuePair<string, string>> answers) =>
        Add("variant", "variant", new AskNode(question, null, [.. answers.Select(a => Way(a.Key, a.Value))], null) { IsCertain = true });

    string AddStep(FaultSplit split, PlanStep step, int depth)
    {
        var candidate = split.Candidates.First(c => c.Check.Id == step.Check);
        var planned = step.Next.ToDictionary(b => b.Outcome, b => Add(split, b.Node, depth + 1), StringComparer.Ordinal);
        var onward = planned.GetValueOrDefault(FaultSplit.ClearOutcome(candidate)) ?? AddAdvice(FaultSplit.FaultsOf(CausesBelow(step)));
        var ways = candidate.Outcomes.Select(o => (o.Key, o.Value, To: planned.GetValueOrDefault(o.Key.Value) ?? Unplanned(split, o.Value, onward))).ToList();
        var key = $"{step.Check}:{string.Join('|', ways.Select(w => w.To))}:{onward}";
        return Add(key, step.Check, candidate.Question is { } question
            ? new AskNode(question.Question, question.Why, [.. ways.Select(w => Way(w.Value.Name.Value, w.To))], At(onward)) { Needs = StepNeeds.None with { Minutes = question.Minutes } }
            : new DoNode(At(candidate.Source!.Origin.Slug), null, [.. ways.Select(w => Way(w.Key.Value, w.To))], At(onward)));
    }

    /// <summary>An outcome that no cause left should show: what it speaks for, or as if nothing was found.</summary>
    string Unplanned(FaultSplit split, Outcome outcome, string onward)
    {
        var known = split.Problem.Causes.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<string> faults = [.. outcome.PointsTo.Select(f => f.Value).Order(StringComparer.Ordinal)];
        return faults switch
        {
            [] => onward,
            [var fault] when known.Contains(fault) => AddFault(fault),
            _ => AddAdvice(faults),
        };
    }

    string AddFault(string fault) => Add("fault:" + fault, "found-" + fault, new FaultNode(At(fault)));

    string AddAdvice(ImmutableArray<string> left) =>
        Add("advice:" + string.Join('|', left), "end", new AdviceNode(order.Advice, order.Drive, [.. left.Select(At)]));

    string Add(string key, string name, TreeNode node)
    {
        if (names.TryGetValue(key, out var known)) return known;
        var free = Enumerable.Range(1, int.MaxValue).Select(i => i == 1 ? name : $"{name}-{i}").First(taken.Add);
        nodes.Add(new(At(free), node));
        return names[key] = free;
    }

    static ImmutableArray<string> CausesBelow(PlanNode plan) => plan switch
    {
        PlanLeaf leaf => leaf.Causes,
        PlanStep step => [.. step.Next.SelectMany(b => CausesBelow(b.Node))],
        _ => throw new ArgumentOutOfRangeException(nameof(plan)),
    };

    KeyValuePair<Located<string>, Located<string>> Way(string answer, string to) => new(At(answer), At(to));

    Located<string> At(string text) => new(text, order.Place);
}
