using System.Buffers;
using System.Text;

namespace GuideGen.Site.Rendering;

/// <summary>Text that is HTML already. Everything else a template prints is escaped.</summary>
public sealed record HtmlText(string Value)
{
    static readonly SearchValues<char> Special = SearchValues.Create("&<>\"'");

    public static HtmlText Empty { get; } = new("");

    /// <summary>Fit for an element's text and for an attribute in quotes.</summary>
    public static string Escape(string text)
    {
        var next = text.AsSpan().IndexOfAny(Special);
        if (next < 0) return text;
        var escaped = new StringBuilder(text.Length + 16);
        var rest = text.AsSpan();
        for (; next >= 0; next = rest.IndexOfAny(Special))
        {
            escaped.Append(rest[..next]).Append(rest[next] switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                _ => "&#39;",
            });
            rest = rest[(next + 1)..];
        }

        return escaped.Append(rest).ToString();
    }

    public override string ToString() => Value;
}

/// <summary>The same as it was drawn, for as long as the page that it goes into is.</summary>
sealed class DrawnHtml(TextBuffer text)
{
    public TextBuffer Text => text;

    public override string ToString() => text.Span.ToString();
}
