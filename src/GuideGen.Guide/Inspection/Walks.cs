namespace GuideGen.Guide.Inspection;

/// <summary>Walks over names that lead to names.</summary>
static class Walks
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
    public static IReadOnlyList<string>? FirstCircle(IEnumerable<string> starts, Func<string, IEnumerable<string>> next)
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

    /// <summary>For each name that is reached, the most names that can be walked before it.</summary>
    /// <remarks>Only for walks without a circle; each way is looked at once.</remarks>
    public static Dictionary<string, int> LongestFrom(string start, Func<string, IEnumerable<string>> next)
    {
        var waysTo = ReachableFrom(start, next).SelectMany(n => next(n).Distinct()).GroupBy(n => n).ToDictionary(g => g.Key, g => g.Count());
        var longest = new Dictionary<string, int>(StringComparer.Ordinal) { [start] = 0 };
        var open = new Queue<string>([start]);
        while (open.TryDequeue(out var name))
        {
            foreach (var further in next(name).Distinct())
            {
                longest[further] = Math.Max(longest.GetValueOrDefault(further), longest[name] + 1);
                if (--waysTo[further] == 0) open.Enqueue(further);
            }
        }

        return longest;
    }
}
