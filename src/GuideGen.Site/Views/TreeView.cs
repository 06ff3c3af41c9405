using GuideGen.Guide.Model;
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
        model["steps"] = new ScriptArray(order.Select(name => Step(view, tree.Find(name)!, name, numbers)));
        return model;
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

    static ScriptObject Step(ViewContext view, TreeNode node, string name, Dictionary<string, int> numbers)
    {
        var step = node switch
        {
            AskNode ask => new ScriptObject { ["kind"] = "ask", ["title"] = ask.Question.Value, ["why"] = ask.Why?.Value },
            DoNode check => Check(view, check),
            FaultNode fault => new ScriptObject { ["kind"] = "fault", ["fault"] = view.Card(view.Guide.Faults.Find(fault.Fault.Value)!) },
            AdviceNode advice => new ScriptObject { ["kind"] = "advice", ["title"] = advice.Advice.Value, ["drive"] = DriveWords.Key(advice.Drive.Value) },
            JoinNode join => new ScriptObject { ["kind"] = "join", ["tree"] = view.Card(view.Guide.Trees.Find(join.Tree.Value)!) },
            _ => throw new InvalidOperationException("a step of a kind that the page does not know"),
        };
        step["anchor"] = name;
        step["number"] = numbers[name];
        step["ways"] = node is BranchNode branch ? new ScriptArray(Ways(view, branch, numbers)) : new ScriptArray();
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
            ["tools"] = new ScriptArray(check.Tools.Select(t => t.Value)),
            ["cautions"] = CautionView.Of(view, check),
        };
    }

    static IEnumerable<ScriptObject> Ways(ViewContext view, BranchNode branch, Dictionary<string, int> numbers)
    {
        foreach (var (key, to) in branch.Answers)
        {
            var words = branch is DoNode step ? OutcomeName(view, step, key.Value) : key.Value;
            yield return new ScriptObject { ["words"] = words, ["to"] = to.Value, ["number"] = numbers[to.Value] };
        }

        if (branch.CannotTell is { } way)
        {
            yield return new ScriptObject { ["words"] = view.Words["tree.cannot-tell"], ["to"] = way.Value, ["number"] = numbers[way.Value] };
        }
    }

    static string OutcomeName(ViewContext view, DoNode step, string outcome) =>
        view.Guide.Checks.Find(step.Check.Value)!.Outcomes.First(o => o.Key.Value == outcome).Value.Name.Value;
}
