using GuideGen.Guide.Model;
using GuideGen.Site.Mapping;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>Which part sits in which path, as a drawing and as lists that say the same.</summary>
static class MapView
{
    public static ScriptObject Of(ViewContext view)
    {
        var paths = view.Guide.Parts.All.Where(p => p.Path is not null).GroupBy(p => p.Path!.Value.Value).OrderBy(g => g.Key).ToList();
        return new ScriptObject
        {
            ["name"] = view.Words["map.title"],
            ["summary"] = view.Words["map.summary"],
            ["drawing"] = paths.Count == 0 ? null : MapDrawing.Of(paths.Select(p => Lane(view, p)), view.Words["map.title"], view.Words["map.drawing"]),
            ["paths"] = new ScriptArray(paths.Select(p => new ScriptObject
            {
                ["key"] = Key(p.Key),
                ["title"] = view.Words["path." + Key(p.Key)],
                ["parts"] = new ScriptArray(InOrder(p).Select(part => Row(view, part))),
            })),
            ["others"] = view.Cards(view.Guide.Parts.All.Where(p => p.Path is null)),
        };
    }

    /// <summary>The key of the theme's words for a path, as authors write it.</summary>
    public static string Key(FlowPath path) => string.Concat(path.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $"-{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));

    static MapLane Lane(ViewContext view, IGrouping<FlowPath, Part> path)
    {
        var own = path.Select(p => p.Origin.Slug).ToHashSet(StringComparer.Ordinal);
        var guests = path.SelectMany(p => p.After).Select(a => a.Value).Distinct().Where(a => !own.Contains(a)).Select(a => view.Guide.Parts.Find(a)!);
        return new MapLane(
            view.Words["path." + Key(path.Key)],
            [.. guests.Select(g => Place(view, g, isGuest: true)), .. path.Select(p => Place(view, p, isGuest: false))]);
    }

    static MapPart Place(ViewContext view, Part part, bool isGuest) =>
        new(part.Origin.Slug, part.Name.Value, view.Links.Of(part), isGuest, isGuest ? [] : [.. part.After.Select(a => a.Value)]);

    /// <summary>As the drawing is read: from the beginning of the path to its end.</summary>
    static IEnumerable<Part> InOrder(IGrouping<FlowPath, Part> path)
    {
        var byId = path.ToDictionary(p => p.Origin.Slug, StringComparer.Ordinal);
        var parts = path.Select(p => new LanePart(p.Origin.Slug, [.. p.After.Select(a => a.Value).Where(byId.ContainsKey)]));
        return LaneLayout.Of([.. parts]).Select(p => byId[p.Id]);
    }

    static ScriptObject Row(ViewContext view, Part part)
    {
        var row = view.Card(part);
        row["where"] = part.Where.Value;
        row["after"] = view.Cards(part.After.Select(a => view.Guide.Parts.Find(a.Value)!));
        return row;
    }
}
