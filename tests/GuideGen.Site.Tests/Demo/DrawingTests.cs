using System.Xml.Linq;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Demo;

/// <summary>The demo guide's drawings can be shown anywhere, and are told in words wherever they stand.</summary>
public sealed class DrawingTests
{
    /// <summary>Elements a drawing is made of: nothing that runs, loads or styles the page around it (SVG 1.1, chapters 16 to 18).</summary>
    static readonly HashSet<string> Allowed = ["svg", "title", "desc", "g", "defs", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan"];

    static readonly ILookup<string, (string Page, string Words)> Uses = DemoText.Guide.Entries
        .SelectMany(e => e.Origin.Body.Links.Where(l => l.IsPicture).Select(l => (Picture: Path.GetFileName(l.Target.Value), Use: (e.Origin.Source.Path, l.Label.Value))))
        .ToLookup(u => u.Picture, u => u.Use);

    public static TheoryData<string> Drawings =>
        [.. Directory.EnumerateFiles(Repository.PathTo("content", "images"), "*.svg").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Drawings))]
    public void A_drawing_holds_nothing_but_shapes_and_letters_and_has_a_title(string drawing)
    {
        var svg = XDocument.Parse(Repository.Read("content", "images", drawing)).Root!;

        Assert.All(svg.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, Allowed));
        Assert.All(svg.DescendantsAndSelf().Attributes(), a => Assert.False(IsUnsafe(a), $"{a}"));
        Assert.NotNull(svg.Attribute("viewBox"));
        Assert.True(svg.Elements().First().Value.Length > 20, "the title says too little");
    }

    [Theory, MemberData(nameof(Drawings))]
    public void A_drawing_is_used_and_told_in_words_wherever_it_stands(string drawing)
    {
        Assert.NotEmpty(Uses[drawing]);
        Assert.All(Uses[drawing], use => Assert.True(use.Words.Length > 40, $"{use.Page}: {use.Words}"));
    }

    [Fact]
    public void There_are_at_least_twenty_five_drawings() => Assert.InRange(Drawings.Count, 25, 400);

    static bool IsUnsafe(XAttribute attribute) =>
        attribute.Name.LocalName is "style" or "href" || attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        || attribute.Value.Contains("url(", StringComparison.OrdinalIgnoreCase);
}
