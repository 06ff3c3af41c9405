using Ganss.Xss;
using GuideGen.Guide.Pages;

namespace GuideGen.Site.Rendering;

/// <summary>
/// Takes out of a drawn section whatever neither Markdown makes nor the guide's settings allow. The inspection has found the
/// text good already; this holds even where its idea of a tag and a browser's differ.
/// </summary>
sealed class HtmlCleaner
{
    static readonly string[] OfMarkdown =
    [
        "a", "blockquote", "br", "code", "div", "em", "h3", "h4", "h5", "h6", "hr", "img", "li", "ol", "p", "pre", "strong",
        "table", "tbody", "td", "th", "thead", "tr", "ul",
    ];

    static readonly string[] AttributesOfMarkdown = ["alt", "class", "height", "href", "id", "loading", "rel", "sizes", "src", "srcset", "start", "tabindex", "title", "width"];

    static readonly string[] Schemes = ["http", "https", "mailto"];

    static readonly string[] Addresses = ["href", "src"];

    readonly HtmlSanitizer sanitizer;

    /// <param name="elements">What the settings allow beside Markdown.</param>
    public HtmlCleaner(IEnumerable<string> elements)
    {
        sanitizer = new HtmlSanitizer(new HtmlSanitizerOptions
        {
            AllowedTags = OfMarkdown.Concat(elements).ToHashSet(StringComparer.OrdinalIgnoreCase),
            AllowedAttributes = AttributesOfMarkdown.Concat(PlainHtml.Attributes).ToHashSet(StringComparer.OrdinalIgnoreCase),
            AllowedSchemes = Schemes.ToHashSet(StringComparer.OrdinalIgnoreCase),
            UriAttributes = Addresses.ToHashSet(StringComparer.OrdinalIgnoreCase),
        })
        { KeepChildNodes = true };
    }

    public HtmlText Clean(HtmlText html) => new(sanitizer.Sanitize(html.Value));
}
