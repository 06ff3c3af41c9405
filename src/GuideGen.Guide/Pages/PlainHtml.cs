using System.Collections.Frozen;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pages;

/// <summary>The HTML that a guide may allow in its pages: elements that mark up words, and nothing that loads, acts or lays out.</summary>
public static class PlainHtml
{
    static readonly string[] Elements =
    [
        "abbr", "b", "bdi", "bdo", "br", "cite", "dd", "del", "details", "dfn", "dl", "dt", "figcaption", "figure", "i", "ins", "kbd",
        "mark", "q", "rp", "rt", "ruby", "s", "samp", "small", "sub", "summary", "sup", "u", "var", "wbr",
    ];

    public static FrozenSet<string> Attributes { get; } = new[] { "dir", "lang", "open", "title" }.ToFrozenSet();

    internal static Shape<Located<string>> Element { get; } = new WordShape<string>(Elements.ToDictionary(e => e));
}
