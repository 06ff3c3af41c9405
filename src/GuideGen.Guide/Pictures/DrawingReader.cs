using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pictures;

/// <summary>
/// Reads the size of an SVG drawing and refuses what could act instead of being looked at: script, event attributes, foreign
/// markup and anything from outside the file. A drawing that a reader opens by itself is not guarded by the page's policy.
/// </summary>
static partial class DrawingReader
{
    const string SvgSpace = "http://www.w3.org/2000/svg";
    const string MarkupSpace = "http://www.w3.org/1999/xhtml";

    /// <summary>A drawing that only states its shape fills the column of text.</summary>
    const int FullWidth = 672;

    static readonly FrozenSet<string> Active = new[] { "script", "foreignobject", "iframe", "embed", "object", "audio", "video", "handler", "listener" }.ToFrozenSet();

    static readonly XmlReaderSettings Settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersFromEntities = 0 };

    /// <returns>Null if it is no drawing or not a safe one; the findings then say why.</returns>
    public static Picture? Read(SourceText source, FindingList findings)
    {
        Picture? picture = null;
        var style = new StringBuilder();
        try
        {
            var copies = new DrawingCopies(StylesOf(source.Text));
            using var xml = XmlReader.Create(new StringReader(source.Text), Settings);
            while (xml.Read())
            {
                if (xml.Depth > GuideLimits.DrawingDepth) return Refuse(source, xml, "markup nested too deeply", findings);
                if (WhyUnsafe(xml, style) is { } why) return Refuse(source, xml, why, findings);
                if (xml.NodeType != XmlNodeType.Element) continue;
                if (picture is null && (xml.LocalName, xml.NamespaceURI) != ("svg", SvgSpace)) break;
                picture ??= SizeOf(xml);
                if (UnsafeAttribute(xml) is { } attribute) return Refuse(source, xml, attribute, findings);
                copies.Take(xml);
            }

            if (copies.IsTooMany) return Refuse(source, xml, "pieces that are used again and again", findings);
        }
        catch (XmlException fault)
        {
            findings.Add(Rules.ImageUnreadable.At(PlaceOf(source, fault.LineNumber, fault.LinePosition)));
            return null;
        }

        if (picture is null) findings.Add(Rules.ImageUnreadable.At(source.Top));
        return picture;
    }

    static DrawingStyles StylesOf(string text)
    {
        var styles = new DrawingStyles();
        if (!text.Contains("style", StringComparison.OrdinalIgnoreCase)) return styles;
        using var xml = XmlReader.Create(new StringReader(text), Settings);
        while (xml.Read())
        {
            // Deeper is refused anyway, and the reader of an inner text goes no deeper than the element.
            if (xml.NodeType == XmlNodeType.Element && xml.LocalName.Equals("style", StringComparison.OrdinalIgnoreCase) && xml.Depth <= GuideLimits.DrawingDepth) styles.Add(TextWithin(xml));
        }

        return styles;
    }

    static string TextWithin(XmlReader xml)
    {
        var text = new StringBuilder();
        using var within = xml.ReadSubtree();
        while (within.Read())
        {
            if (within.NodeType is XmlNodeType.Text or XmlNodeType.CDATA) text.Append(within.Value);
        }

        return text.ToString();
    }

    /// <param name="style">Gathers the text of a style: what stands in two pieces with a comment between them is one to a browser.</param>
    static string? WhyUnsafe(XmlReader xml, StringBuilder style)
    {
        if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA) style.Append(xml.Value);
        if (xml.NodeType is not (XmlNodeType.Element or XmlNodeType.EndElement)) return xml.NodeType is XmlNodeType.ProcessingInstruction ? $"the instruction '{xml.Name}'" : null;
        var text = style.ToString();
        style.Clear();
        if (LeavesFile(text)) return "a style that loads something";
        return xml.NamespaceURI == MarkupSpace || Active.Contains(xml.LocalName.ToLowerInvariant()) ? $"the element '{xml.LocalName}'" : null;
    }

    static string? UnsafeAttribute(XmlReader xml)
    {
        string? why = null;
        while (why is null && xml.MoveToNextAttribute()) why = IsSafe(xml.LocalName.ToLowerInvariant(), xml.Value.Trim()) ? null : $"the attribute '{xml.Name}'";
        xml.MoveToElement();
        return why;
    }

    static bool IsSafe(string name, string value) => name switch
    {
        _ when name.StartsWith("on", StringComparison.Ordinal) => false,
        // An animation could put an address in later.
        "attributename" => !value.EndsWith("href", StringComparison.OrdinalIgnoreCase),
        "base" => false,
        "href" or "src" => value.Length == 0 || value[0] == '#' || InnerPicture().IsMatch(value),
        _ => !LeavesFile(value) && !value.StartsWith("javascript:", StringComparison.OrdinalIgnoreCase),
    };

    static bool LeavesFile(string style) => Loads().IsMatch(style);

    static Picture SizeOf(XmlReader xml)
    {
        var box = (xml.GetAttribute("viewBox") ?? "").Split([' ', ',', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);
        var (width, height) = (Pixels(xml.GetAttribute("width")), Pixels(xml.GetAttribute("height")));
        if (width > 0 && height > 0) return new Picture(width, height, IsDrawing: true);
        var (across, down) = box.Length == 4 ? (Pixels(box[2]), Pixels(box[3])) : (0, 0);
        return across > 0 && down > 0
            ? new Picture(FullWidth, (int)Math.Round(FullWidth * (double)down / across), IsDrawing: true)
            : new Picture(0, 0, IsDrawing: true);
    }

    /// <summary>Whole pixels; 0 for what is left out or relative.</summary>
    static int Pixels(string? written) =>
        written is not null
        && double.TryParse(written.EndsWith("px", StringComparison.Ordinal) ? written[..^2] : written, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
        && value is > 0 and < 100_000 ? (int)Math.Round(value) : 0;

    static Picture? Refuse(SourceText source, XmlReader xml, string what, FindingList findings)
    {
        var at = (IXmlLineInfo)xml;
        findings.Add(Rules.ImageUnsafe.At(PlaceOf(source, at.LineNumber, at.LinePosition), what));
        return null;
    }

    static SourceSpan PlaceOf(SourceText source, int line, int column) =>
        line < 1 || line > source.LineCount ? source.Top : source.Span(Math.Min(source.StartOf(line) + Math.Max(0, column - 1), source.Text.Length), 0);

    [GeneratedRegex(@"@import|image(-set)?\(|url\(\s*['""]?\s*(?!#|['""\s])|\\", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Loads();

    [GeneratedRegex(@"^data:image/(png|jpeg|webp);base64,[A-Za-z0-9+/=\s]*$", RegexOptions.CultureInvariant)]
    private static partial Regex InnerPicture();
}
