using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Model;

/// <summary>A walk of questions and checks from a symptom to a fault.</summary>
/// <param name="Start">Name of the first step; empty in a tree that still has to be computed.</param>
/// <param name="Nodes">The steps by name; none in a tree that still has to be computed.</param>
public sealed record Tree(
    PageOrigin Origin,
    Located<string> Name,
    Located<string> Summary,
    Located<string> Symptom,
    Located<string> Start,
    ImmutableArray<KeyValuePair<Located<string>, TreeNode>> Nodes) : IGuideEntry
{
    /// <summary>What the tool is to build the steps from; null where the author wrote them.</summary>
    public ComputedOrder? Computed { get; init; }

    public bool IsUnbuilt => Computed is not null && Nodes.IsEmpty;

    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    public TreeNode? Find(string name) => Nodes.FirstOrDefault(n => n.Key.Value == name).Value;
}

/// <summary>One step of a tree.</summary>
public abstract record TreeNode
{
    /// <summary>The steps that can follow, with the answer that leads there.</summary>
    public virtual IEnumerable<KeyValuePair<Located<string>, Located<string>>> Ways => [];
}

/// <summary>A step with several ways on.</summary>
/// <param name="Answers">What is answered or seen, and the step it leads to.</param>
/// <param name="CannotTell">Where to go without an answer.</param>
public abstract record BranchNode(
    ImmutableArray<KeyValuePair<Located<string>, Located<string>>> Answers,
    Located<string>? CannotTell) : TreeNode
{
    public StepNeeds Needs { get; init; } = StepNeeds.None;

    public override IEnumerable<KeyValuePair<Located<string>, Located<string>>> Ways =>
        CannotTell is { } way ? Answers.Append(new(way.With("cannot-tell"), way)) : Answers;
}

public sealed record AskNode(
    Located<string> Question,
    Located<string>? Why,
    ImmutableArray<KeyValuePair<Located<string>, Located<string>>> Answers,
    Located<string>? CannotTell) : BranchNode(Answers, CannotTell)
{
    /// <summary>True where everybody can answer, so that no way is needed for somebody who cannot tell.</summary>
    public bool IsCertain { get; init; }
}

public sealed record DoNode(
    Located<string> Check,
    Located<string>? Why,
    ImmutableArray<KeyValuePair<Located<string>, Located<string>>> Answers,
    Located<string>? CannotTell) : BranchNode(Answers, CannotTell);

public sealed record FaultNode(Located<string> Fault) : TreeNode;

/// <param name="Left">Faults that nothing on the walk has told apart or ruled out.</param>
public sealed record AdviceNode(Located<string> Advice, Located<DriveAdvice> Drive, ImmutableArray<Located<string>> Left) : TreeNode;

public sealed record JoinNode(Located<string> Tree) : TreeNode;

/// <summary>A step is one of five kinds; which one, its keys say.</summary>
sealed class TreeNodeShape : Shape<TreeNode>
{
    static readonly Dictionary<string, Shape<TreeNode>> Kinds = new()
    {
        ["ask"] = new AskShape(),
        ["do"] = new DoShape(),
        ["fault"] = new FaultLeafShape(),
        ["advice"] = new AdviceShape(),
        ["join"] = new JoinShape(),
    };

    public override string Expected => "a step with one of " + string.Join(", ", Kinds.Keys);

    public override Outline Outline => new ChoiceOutline(Expected, [.. Kinds.Values.Select(k => (RecordOutline)k.Outline)]);

    public override bool TryRead(YamlNode node, Binding binding, out TreeNode value)
    {
        if (node is not YamlMap map) return Refuse(node, binding, out value);
        var kinds = map.Entries.Select(e => e.Key.Value).Where(Kinds.ContainsKey).ToList();
        if (kinds is [var kind]) return Kinds[kind].TryRead(node, binding, out value);
        binding.Findings.Add(Rules.TreeStepKind.At(
            map.Span with { Length = 0 }, kinds.Count == 0 ? "none" : string.Join(" and ", kinds), string.Join(", ", Kinds.Keys)));
        value = null!;
        return false;
    }
}
