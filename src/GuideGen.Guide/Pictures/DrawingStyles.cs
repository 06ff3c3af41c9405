using System.Collections.Immutable;
using System.Text.RegularExpressions;
using System.Xml;

namespace GuideGen.Guide.Pictures;

/// <summary>
/// Which pieces of a drawing its style sheets bring in, and for which elements. Every element counts as meant that has any name, class
/// or id of a selector, however they are combined: rather too many than too few.
/// </summary>
sealed partial class DrawingStyles
{
    readonly List<(ImmutableHashSet<string> Names, bool IsForAll, ImmutableArray<DrawingUse> Uses)> rules = [];

    /// <param name="sheet">The text of a style element.</param>
    public void Add(string sheet)
    {
        foreach (Match rule in Rule().Matches(Comment().Replace(sheet, "")))
        {
            var uses = DrawingUse.In(rule.Groups[2].Value);
            var selector = rule.Groups[1].Value;
            if (!uses.IsEmpty) rules.Add((Name().Matches(selector).Select(m => m.Value).ToImmutableHashSet(StringComparer.OrdinalIgnoreCase), selector.AsSpan().ContainsAny("*[:"), uses));
        }
    }

    /// <param name="xml">At an element.</param>
    public IEnumerable<DrawingUse> Of(XmlReader xml)
    {
        if (rules.Count == 0) return [];
        string[] names = [xml.LocalName, "#" + xml.GetAttribute("id"), .. (xml.GetAttribute("class") ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(c => "." + c)];
        return rules.Where(r => r.IsForAll || names.Any(r.Names.Contains)).SelectMany(r => r.Uses);
    }

    [GeneratedRegex(@"([^{}]*)\{([^{}]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Rule();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"[.#]?[\w-]+", RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}

/// <summary>A piece of a drawing that is drawn again where something refers to it.</summary>
/// <param name="Id">Of the piece.</param>
/// <param name="IsInherited">True for paint and markers, which whatever is inside has as well.</param>
readonly partial record struct DrawingUse(string Id, bool IsInherited)
{
    /// <param name="style">Declarations, as in a style sheet or a style attribute.</param>
    public static ImmutableArray<DrawingUse> In(string style) =>
        [.. style.Split(';').SelectMany(d => OfProperty(d.Split(':')[0].Trim(), d))];

    /// <param name="property">The name of a property, or of an attribute that stands for it.</param>
    public static IEnumerable<DrawingUse> OfProperty(string property, string value)
    {
        var isInherited = property.StartsWith("--", StringComparison.Ordinal) || Inherited().IsMatch(property);
        return InnerAddress().Matches(value).Select(m => new DrawingUse(m.Groups[1].Value, isInherited));
    }

    [GeneratedRegex("^(fill|stroke|marker(-start|-mid|-end)?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Inherited();

    [GeneratedRegex(@"url\(\s*['""]?\s*#([^'"")\s]+)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InnerAddress();
}
