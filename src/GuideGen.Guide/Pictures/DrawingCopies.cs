using System.Text.RegularExpressions;
using System.Xml;

namespace GuideGen.Guide.Pictures;

/// <summary>
/// Counts what a browser has to draw: an element that is used elsewhere is drawn again there, with whatever it uses itself, so
/// that a dozen lines can stand for millions of elements.
/// </summary>
sealed partial class DrawingCopies
{
    /// <summary>What stands within an element with an id: how many elements, and to which ids they refer.</summary>
    sealed record Named(List<string> Uses)
    {
        public int Elements { get; set; }

        public long Cost { get; set; } = Unknown;
    }

    const long Unknown = -1;
    const long UnderWay = -2;

    readonly Named all = new([]);
    readonly Dictionary<string, Named> byId = new(StringComparer.Ordinal);
    readonly Stack<(int Depth, Named Named)> open = new();

    /// <param name="xml">At an element; it stands there again afterwards.</param>
    public void Take(XmlReader xml)
    {
        while (open.Count > 0 && open.Peek().Depth >= xml.Depth) open.Pop();
        if (xml.GetAttribute("id") is { Length: > 0 } id)
        {
            if (!byId.TryGetValue(id, out var named)) byId.Add(id, named = new([]));
            open.Push((xml.Depth, named));
        }

        all.Elements++;
        foreach (var (_, within) in open) within.Elements++;
        foreach (var use in UsesOf(xml))
        {
            all.Uses.Add(use);
            foreach (var (_, within) in open) within.Uses.Add(use);
        }
    }

    /// <summary>True if it is more than <see cref="GuideLimits.DrawnElements"/>, or never ends.</summary>
    public bool IsTooMany => CostOf(all, 0) > GuideLimits.DrawnElements;

    long CostOf(Named named, int depth)
    {
        if (named.Cost >= 0) return named.Cost;
        if (named.Cost == UnderWay || depth > GuideLimits.DrawingDepth) return long.MaxValue / 2;
        named.Cost = UnderWay;
        long cost = named.Elements;
        foreach (var use in named.Uses.TakeWhile(_ => cost <= GuideLimits.DrawnElements))
        {
            if (byId.TryGetValue(use, out var target)) cost += CostOf(target, depth + 1);
        }

        return named.Cost = Math.Min(cost, GuideLimits.DrawnElements + 1);
    }

    static List<string> UsesOf(XmlReader xml)
    {
        // A link is followed by a reader and not drawn.
        var isLink = xml.LocalName == "a";
        var uses = new List<string>();
        while (xml.MoveToNextAttribute())
        {
            if (xml.LocalName == "href" && !isLink && xml.Value.Trim() is ['#', .. var id]) uses.Add(id);
            foreach (Match match in InnerAddress().Matches(xml.Value)) uses.Add(match.Groups[1].Value);
        }

        xml.MoveToElement();
        return uses;
    }

    [GeneratedRegex(@"url\(\s*['""]?\s*#([^'"")\s]+)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InnerAddress();
}
