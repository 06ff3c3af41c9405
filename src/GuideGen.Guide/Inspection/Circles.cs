namespace GuideGen.Guide.Inspection;

/// <summary>Walks over names that lead to names.</summary>
static class Circles
{
    public static HashSet<string> ReachableFrom(string start, Func<string, IEnumerable<string>> next)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal) { start };
        var open = new Stack<string>([start]);
        while (open.TryPop(out var name))
        {
            foreach (var further in next(name).Where(reached.Add)) open.Push(further);
        }

        return reached;
    }

    /// <summary>The first walk that comes back to where it was, with that name at both ends; null if there is none.</summary>
    /// <remarks>Keeps its own stack: a tree may be as deep as a hostile author likes.</remarks>
    public static IReadOnlyList<string>? FirstFrom(IEnumerable<string> starts, Func<string, IEnumerable<string>> next)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var start in starts)
        {
            var path = new List<(string Name, IEnumerator<string> Ways)> { (start, next(start).GetEnumerator()) };
            while (path.Count > 0)
            {
                var (name, ways) = path[^1];
                if (!ways.MoveNext())
                {
                    done.Add(name);
                    path.RemoveAt(path.Count - 1);
                    continue;
                }

                var from = path.FindIndex(p => p.Name == ways.Current);
                if (from >= 0) return [.. path.Skip(from).Select(p => p.Name), ways.Current];
                if (!done.Contains(ways.Current)) path.Add((ways.Current, next(ways.Current).GetEnumerator()));
            }
        }

        return null;
    }
}
