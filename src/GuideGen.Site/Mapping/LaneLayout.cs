using System.Collections.Immutable;

namespace GuideGen.Site.Mapping;

/// <summary>A part to be placed in a lane.</summary>
/// <param name="After">The parts before it in the same lane.</param>
public sealed record LanePart(string Id, ImmutableArray<string> After);

/// <param name="Column">How many parts at least stand before it.</param>
/// <param name="Row">No two parts of a column share a row.</param>
public sealed record LanePlace(string Id, int Column, int Row);

/// <summary>Puts the parts of one path into columns by the longest way to them, and into rows beside what they come after.</summary>
public static class LaneLayout
{
    /// <summary>Parts that hang together with none stand side by side below the others, this many in a row.</summary>
    const int Widest = 6;

    /// <param name="parts">Without circles, which inspection refuses.</param>
    /// <returns>One place for each part: by column, then by row; those that hang together with none at the end.</returns>
    public static ImmutableArray<LanePlace> Of(ImmutableArray<LanePart> parts)
    {
        var joined = parts.SelectMany(p => p.After.IsEmpty ? [] : p.After.Add(p.Id)).ToHashSet(StringComparer.Ordinal);
        var places = Joined([.. parts.Where(p => joined.Contains(p.Id))]);
        var below = places.IsEmpty ? 0 : places.Max(p => p.Row) + 1;
        return [.. places, .. parts.Where(p => !joined.Contains(p.Id)).Select((p, i) => new LanePlace(p.Id, i % Widest, below + i / Widest))];
    }

    static ImmutableArray<LanePlace> Joined(ImmutableArray<LanePart> parts)
    {
        var columns = Columns(parts);
        var rows = new Dictionary<string, int>(StringComparer.Ordinal);
        var places = ImmutableArray.CreateBuilder<LanePlace>();
        foreach (var column in parts.GroupBy(p => columns[p.Id]).OrderBy(g => g.Key))
        {
            var next = 0;
            foreach (var (part, wish) in column.Select(p => (p, Wish: Wish(p))).OrderBy(p => p.Wish).ThenBy(p => p.p.Id, StringComparer.Ordinal))
            {
                var row = Math.Max(next, (int)Math.Round(wish));
                rows[part.Id] = row;
                next = row + 1;
                places.Add(new LanePlace(part.Id, column.Key, row));
            }
        }

        return places.ToImmutable();

        double Wish(LanePart part) => part.After.IsEmpty ? 0 : part.After.Average(a => rows[a]);
    }

    static Dictionary<string, int> Columns(ImmutableArray<LanePart> parts)
    {
        var byId = parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var part in parts) ColumnOf(part.Id);
        return columns;

        int ColumnOf(string id)
        {
            if (columns.TryGetValue(id, out var known)) return known;
            var after = byId[id].After;
            return columns[id] = after.IsEmpty ? 0 : after.Max(ColumnOf) + 1;
        }
    }
}
