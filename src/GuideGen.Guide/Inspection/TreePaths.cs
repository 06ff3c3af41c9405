using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>The steps of one tree by name, and shortest ways between them for messages.</summary>
sealed class TreePaths(Tree tree)
{
    readonly Dictionary<string, TreeNode> nodes = tree.Nodes.DistinctBy(n => n.Key.Value).ToDictionary(n => n.Key.Value, n => n.Value, StringComparer.Ordinal);

    public TreeNode? Find(string name) => nodes.GetValueOrDefault(name);

    public IEnumerable<string> Next(string name) => nodes.TryGetValue(name, out var node) ? node.Ways.Select(w => w.Value.Value).Where(nodes.ContainsKey) : [];

    /// <summary>The names from the start to a step, both included, joined for a message; the step alone if nothing leads to it.</summary>
    public string To(string name) => Between(tree.Start.Value, name);

    /// <summary>The shortest way; of equal ones the first as written.</summary>
    public string Between(string from, string to)
    {
        var before = new Dictionary<string, string>(StringComparer.Ordinal);
        var open = new Queue<string>([from]);
        while (open.TryDequeue(out var name) && name != to)
        {
            foreach (var next in Next(name).Where(n => n != from && before.TryAdd(n, name))) open.Enqueue(next);
        }

        var path = new List<string> { to };
        while (before.TryGetValue(path[^1], out var earlier)) path.Add(earlier);
        return string.Join(" > ", Enumerable.Reverse(path));
    }

    /// <summary>The steps that may come after this one.</summary>
    public HashSet<string> After(string name) => [.. Next(name).SelectMany(n => Walks.ReachableFrom(n, Next))];

    /// <summary>The steps that a walk can come to without this one.</summary>
    public HashSet<string> Avoiding(string name) => Walks.ReachableFrom(tree.Start.Value, n => n == name ? [] : Next(n));

    /// <summary>The first checks that come after a step on one way, with questions passed over.</summary>
    public IEnumerable<(string Name, DoNode Step)> NextChecks(string name) => Find(name) switch
    {
        DoNode step => [(name, step)],
        AskNode => Next(name).SelectMany(NextChecks),
        _ => [],
    };
}
