using GuideGen.Guide.Model;
using GuideGen.Site.Rendering;
using GuideGen.Site.Trees;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>A tree as linked steps in the order one meets them: it can be walked without script.</summary>
static class TreeView
{
    public static ScriptObject Of(ViewContext view, Tree tree)
    {
        var model = new ScriptObject
        {
            ["name"] = tree.Name.Value,
            ["summary"] = tree.Summary.Value,
            ["variants"] = view.Variants(tree),
            ["symptom"] = view.Card(view.Guide.Symptoms.Find(tree.Symptom.Value)!),
        };
        var order = InOrder(tree);
        var numbers = order.Select((name, i) => (name, i)).ToDictionary(s => s.name, s => s.i + 1);
        var steps = order.ConvertAll(name => Step(view, tree, name, numbers));
        model["steps"] = new ScriptArray(steps);
        model["costs"] = TreeFacts.Costs(view, tree);
        model["built"] = tree.Computed?.Method;
        model["tools"] = new ScriptArray(order.Select(tree.Find).OfType<DoNode>().SelectMany(d => d.Needs.ToolsOf(view.Guide.Checks.Find(d.Check.Value))).Select(t => t.Value).Distinct().Order(StringComparer.Ordinal));
        model["asked_variants"] = TreeFacts.AskedVariants(view, tree);
        model["drawing"] = Drawing(view, tree, numbers);
        return model;
    }

    static HtmlText Drawing(ViewContext view, Tree tree, Dictionary<string, int> numbers)
    {
        var drawn = numbers.OrderBy(n => n.Value).Select(n => new DrawnStep(
            n.Value, n.Key, KindOf(tree.Find(n.Key)!), TextOf(view, tree.Find(n.Key)!), [.. AnswersOf(view, tree.Find(n.Key)!)])).ToList();
        return TreeDrawing.Of(drawn, view.Fill("tree.map-title", tree.Name.Value), view.Fill("tree.map-words", $"{drawn.Count}"));
    }

    static string KindOf(TreeNode node) => node switch { AskNode => "ask", DoNode => "do", FaultNode => "fault", AdviceNode => "advice", _ => "join" };

    static string TextOf(ViewContext view, TreeNode node) => node switch
    {
        AskNode ask => ask.Question.Value,
        DoNode check => view.Guide.Checks.Find(check.Check.Value)!.Name.Value,
        FaultNode fault => view.Guide.Faults.Find(fault.Fault.Value)!.Name.Value,
        AdviceNode advice => advice.Advice.Value,
        JoinNode join => view.Guide.Trees.Find(join.Tree.Value)!.Name.Value,
        _ => throw new InvalidOperationException("a step of a kind that the drawing does not know"),
    };

    static IEnumerable<(string Answer, string To)> AnswersOf(ViewContext view, TreeNode node)
    {
        if (node is not BranchNode branch) yield break;
        foreach (var (key, to) in branch.Answers) yield return (branch is DoNode step ? OutcomeName(view, step, key.Value) : key.Value, to.Value);
        if (branch.CannotTell is { } way) yield return (view.Words["tree.cannot-tell"], way.Value);
    }

    static List<string> InOrder(Tree tree)
    {
        var order = new List<string>();
        var open = new Queue<string>([tree.Start.Value]);
        while (open.TryDequeue(out var name))
        {
            if (order.Contains(name)) continue;
            order.Add(name);
            foreach (var way in tree.Find(name)!.Ways) open.Enqueue(way.Value.Value);
        }

        return order;
    }

    static ScriptObject Step(ViewContext view, Tree tree, string name, Dictionary<string, int> numbers)
    {
        var node = tree.Find(name)!;
        var step = node switch
        {
            AskNode ask => new ScriptObject { ["kind"] = "ask", ["title"] = ask.Question.Value, ["why"] = ask.Why?.Value },
            DoNode check => Check(view, check),
            FaultNode fault => new ScriptObject { ["kind"] = "fault", ["fault"] = view.Card(view.Guide.Faults.Find(fault.Fault.Value)!) },
            AdviceNode advice => new ScriptObject { ["kind"] = "advice", ["title"] = advice.Advice.Value, ["drive"] = DriveWords.Key(advice.Drive.Value), ["left"] = view.Cards(advice.Left.Select(f => view.Guide.Faults.Find(f.Value)!)) },
            JoinNode join => new ScriptObject { ["kind"] = "join", ["tree"] = view.Card(view.Guide.Trees.Find(join.Tree.Value)!), ["made"] = view.Cards(RepeatedChecks.At(view.Guide.AllTrees, tree, name).Select(c => view.Guide.Checks.Find(c)!)) },
            _ => throw new InvalidOperationException("a step of a kind that the page does not know"),
        };
        step["anchor"] = name;
        step["number"] = numbers[name];
        step["ways"] = node is BranchNode branch ? new ScriptArray(Ways(view, tree, branch, numbers)) : new ScriptArray();
        return step;
    }

    static ScriptObject Check(ViewContext view, DoNode step)
    {
        var check = view.Guide.Checks.Find(step.Check.Value)!;
        return new ScriptObject
        {
            ["kind"] = "do",
            ["title"] = check.Name.Value,
            ["why"] = step.Why?.Value,
            ["check"] = view.Card(check),
            ["minutes"] = view.Minutes(step.Needs.MinutesOf(check)),
            ["money"] = step.Needs.MoneyOf(check) is var money and > 0 ? view.Money(new MoneyRange((decimal)money, (decimal)money)) : null,
            ["setup"] = new ScriptArray(step.Needs.SetupOf(check).Select(s => TreeFacts.Setup(view, view.Setup(s)))),
            ["tools"] = new ScriptArray(step.Needs.ToolsOf(check).Select(t => t.Value)),
            ["readings"] = new ScriptArray(check.Readings.Select((r, i) => ReadingView.Of(view, r, i + 1))),
            ["cautions"] = CautionView.Of(view, TreeFacts.HazardsOf(view, step, check)),
            ["grave"] = TreeHazards.Of(view.Guide.Vehicle, step, check).Any(h => view.Guide.Hazards[h].IsGrave),
        };
    }

    static IEnumerable<ScriptObject> Ways(ViewContext view, Tree tree, BranchNode branch, Dictionary<string, int> numbers)
    {
        var variants = branch is AskNode ask ? VariantAnswers.Of(view.Guide.Vehicle, tree, ask) : null;
        for (var i = 0; i < branch.Answers.Length; i++)
        {
            var (key, to) = branch.Answers[i];
            var words = branch is DoNode step ? OutcomeName(view, step, key.Value) : key.Value;
            yield return new ScriptObject { ["words"] = words, ["to"] = to.Value, ["number"] = numbers[to.Value], ["unsure"] = false, ["variants"] = variants is { } named ? string.Join(' ', named[i]) : null };
        }

        if (branch.CannotTell is { } way)
        {
            yield return new ScriptObject { ["words"] = view.Words["tree.cannot-tell"], ["to"] = way.Value, ["number"] = numbers[way.Value], ["unsure"] = true, ["variants"] = null };
        }
    }

    static string OutcomeName(ViewContext view, DoNode step, string outcome) =>
        view.Guide.Checks.Find(step.Check.Value)!.Outcomes.First(o => o.Key.Value == outcome).Value.Name.Value;
}
