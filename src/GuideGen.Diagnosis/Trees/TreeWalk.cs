using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

/// <summary>
/// Sends all causes down the tree at once. Paths that meet at a node with the same preparations made and the same
/// checks done go on as one, so a tree whose branches join again costs no more than its nodes.
/// </summary>
internal sealed class TreeWalk
{
    readonly ImmutableArray<WeightedCause> causes;
    readonly SymptomTree tree;
    readonly TreeShape shape;
    readonly SetupLedger ledger;
    readonly Dictionary<string, Dictionary<Done, Crowd>> waiting = new(StringComparer.Ordinal);
    readonly Dictionary<string, TreeProblem> repeats = new(StringComparer.Ordinal);
    readonly Crowd arrived;
    readonly double[] found, wrong, noAnswer;
    readonly bool[] assumed;

    public TreeWalk(SymptomTree tree, TreeShape shape, ImmutableArray<WeightedCause> causes)
    {
        (this.tree, this.shape, this.causes) = (tree, shape, causes);
        ledger = new(tree.Setups, tree.Nodes.OfType<TreeStep>().SelectMany(s => s.Setups));
        arrived = new(causes.Length);
        (found, wrong, noAnswer) = (new double[causes.Length], new double[causes.Length], new double[causes.Length]);
        assumed = new bool[causes.Length];
    }

    public Effort Worst => arrived.Worst;

    public int Deepest => arrived.Steps;

    public IEnumerable<TreeProblem> Repeats => repeats.Values;

    public CauseWalk Of(int cause) => new(
        causes[cause].Id,
        new(arrived.Minutes[cause], arrived.Money[cause]),
        found[cause],
        wrong[cause],
        noAnswer[cause],
        assumed[cause]);

    public void Run()
    {
        Dictionary<string, HashSet<string>> leavesBelow = shape.LeavesBelow();
        Crowd all = new(causes.Length);
        Array.Fill(all.Mass, 1);
        At(tree.Start, new(0, "")).Add(all, Effort.None);
        foreach (TreeNode node in shape.FromStart)
        {
            if (!waiting.Remove(node.Id, out Dictionary<Done, Crowd>? crowds))
                continue;
            if (node is TreeLeaf leaf)
                Arrive(leaf, crowds.Values);
            else if (node is TreeStep step)
                Divide(step, BranchShares.Of(step, causes, leavesBelow), crowds);
        }
    }

    void Arrive(TreeLeaf leaf, IEnumerable<Crowd> crowds)
    {
        foreach (Crowd crowd in crowds)
        {
            arrived.Add(crowd, Effort.None);
            for (int c = 0; c < causes.Length; c++)
                (leaf.Cause is null ? noAnswer : leaf.Cause == causes[c].Id ? found : wrong)[c] += crowd.Mass[c];
        }
    }

    void Divide(TreeStep step, BranchShares shares, Dictionary<Done, Crowd> crowds)
    {
        long needs = ledger.MaskOf(step.Setups);
        foreach ((Done done, Crowd crowd) in crowds)
        {
            Effort effort = Effort.None;
            Done after = done;
            if (step.Check is null || !done.HasCheck(step.Check))
            {
                effort = step.Effort + ledger.Missing(needs, done.Setups);
                after = done.With(needs, step.Check);
            }
            else
            {
                repeats[step.Id] = new(TreeFlaw.RepeatedCheck, step.Id, [.. crowd.Path, step.Id]);
            }

            for (int b = 0; b < step.Branches.Length; b++)
                Send(crowd, shares.Shares[b], effort, (step, step.Branches[b].Next, after));
            for (int c = 0; c < causes.Length; c++)
                assumed[c] |= shares.Assumed[c] && crowd.Mass[c] > 0;
        }
    }

    void Send(Crowd crowd, double[] share, Effort effort, (TreeStep From, string Next, Done After) way)
    {
        Crowd part = crowd.Part(share, way.From.Id);
        if (part.Mass.Zip(causes, (mass, cause) => mass > 0 && cause.Probability > 0).Any(possible => possible))
            At(way.Next, way.After).Add(part, effort);
    }

    Crowd At(string node, Done done)
    {
        if (!waiting.TryGetValue(node, out Dictionary<Done, Crowd>? crowds))
            waiting[node] = crowds = [];
        if (!crowds.TryGetValue(done, out Crowd? crowd))
            crowds[done] = crowd = new(causes.Length);
        return crowd;
    }
}

/// <summary>Preparations as bits, checks as a sorted list of ids in one string.</summary>
internal readonly record struct Done(long Setups, string Checks)
{
    public bool HasCheck(string check) => Checks.Contains($"|{check}|", StringComparison.Ordinal);

    public Done With(long setups, string? check) => new(
        Setups | setups,
        check is null ? Checks : string.Concat(Split().Append(check).Order(StringComparer.Ordinal).Select(c => $"|{c}|")));

    string[] Split() => Checks.Split('|', StringSplitOptions.RemoveEmptyEntries);
}
