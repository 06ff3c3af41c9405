using System.Xml;

namespace GuideGen.Guide.Pictures;

/// <summary>
/// Counts what a browser has to draw: an element that is used elsewhere is drawn again there, with whatever it uses itself, so
/// that a dozen lines can stand for millions of elements.
/// </summary>
/// <param name="styles">All of the drawing.</param>
sealed class DrawingCopies(DrawingStyles styles)
{
    /// <summary>What stands within an element with an id: how many elements, and how often they refer to which ids.</summary>
    sealed class Named
    {
        public Dictionary<string, long> Uses { get; } = new(StringComparer.Ordinal);

        public long Elements { get; set; }

        public long Cost { get; set; } = Unknown;
    }

    /// <summary>An element that has not ended yet.</summary>
    /// <param name="Inherited">Pieces that every element inside uses as well.</param>
    sealed record Open(int Depth, Named? Named, List<string> Inherited);

    const long Unknown = -1;
    const long UnderWay = -2;
    const long TooMany = GuideLimits.DrawnElements + 1;

    readonly Named all = new();
    readonly Dictionary<string, Named> byId = new(StringComparer.Ordinal);
    readonly Stack<Open> open = new();

    /// <param name="xml">At an element; it stands there again afterwards.</param>
    public void Take(XmlReader xml)
    {
        while (open.Count > 0 && open.Peek().Depth >= xml.Depth) open.Pop();
        Named? named = null;
        if (xml.GetAttribute("id") is { Length: > 0 } id && !byId.TryGetValue(id, out named)) byId.Add(id, named = new());
        List<DrawingUse> own = [.. styles.Of(xml), .. UsesOf(xml)];
        open.Push(new Open(xml.Depth, named, [.. own.Where(u => u.IsInherited).Select(u => u.Id)]));
        List<string> uses = [.. own.Where(u => !u.IsInherited).Select(u => u.Id), .. open.SelectMany(o => o.Inherited)];
        foreach (var within in open.Select(o => o.Named).OfType<Named>().Append(all))
        {
            within.Elements++;
            foreach (var use in uses) within.Uses[use] = within.Uses.GetValueOrDefault(use) + 1;
        }
    }

    /// <summary>True if it is more than <see cref="GuideLimits.DrawnElements"/>, or never ends.</summary>
    public bool IsTooMany => CostOf(all, 0) >= TooMany;

    long CostOf(Named named, int depth)
    {
        if (named.Cost >= 0) return named.Cost;
        if (named.Cost == UnderWay || depth > GuideLimits.DrawingDepth) return TooMany;
        named.Cost = UnderWay;
        var cost = named.Elements;
        foreach (var (use, times) in named.Uses.TakeWhile(_ => cost < TooMany))
        {
            if (byId.TryGetValue(use, out var target)) cost += times * CostOf(target, depth + 1);
        }

        return named.Cost = Math.Min(cost, TooMany);
    }

    static List<DrawingUse> UsesOf(XmlReader xml)
    {
        // A link is followed by a reader and not drawn.
        var isLink = xml.LocalName == "a";
        var uses = new List<DrawingUse>();
        while (xml.MoveToNextAttribute())
        {
            if (xml.LocalName == "href" && !isLink && xml.Value.Trim() is ['#', .. var id]) uses.Add(new(id, IsInherited: false));
            uses.AddRange(xml.LocalName == "style" ? DrawingUse.In(xml.Value) : DrawingUse.OfProperty(xml.LocalName, xml.Value));
        }

        xml.MoveToElement();
        return uses;
    }
}
