using System.Diagnostics.CodeAnalysis;
using System.Text;
using Markdig;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace GuideGen.Guide.Pages;

/// <summary>
/// The Markdown of a guide: CommonMark with pipe tables; raw HTML is plain text. The inspection and the
/// renderer read pages through here, so both see the same headings with the same anchors.
/// </summary>
public static class PageMarkdown
{
    public static MarkdownPipeline Pipeline { get; } = Builder().DisableHtml().Build();

    /// <summary>For guides whose settings allow some HTML: it is inspected, and sanitized when it is drawn.</summary>
    static MarkdownPipeline WithHtml { get; } = Builder().Build();

    /// <summary>The syntax tree, with an id on every heading; positions count from the start of the given text.</summary>
    /// <exception cref="ArgumentException">The text is nested too deeply. The loader refuses such pages.</exception>
    public static MarkdownDocument Parse(string markdown, bool allowsHtml = false)
    {
        var document = Markdown.Parse(markdown, allowsHtml ? WithHtml : Pipeline);
        var anchors = new Anchors();
        foreach (var heading in document.Descendants<HeadingBlock>()) heading.GetAttributes().Id = anchors.Next(PlainText(heading.Inline));
        return document;
    }

    /// <returns>False if the text is nested too deeply, which Markdig tells by an exception.</returns>
    public static bool TryParse(string markdown, bool allowsHtml, [NotNullWhen(true)] out MarkdownDocument? document)
    {
        try
        {
            document = Parse(markdown, allowsHtml);
            return true;
        }
        catch (ArgumentException)
        {
            document = null;
            return false;
        }
    }

    static MarkdownPipelineBuilder Builder() => new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Use<MarkCounter>();

    /// <summary>The words without their marks.</summary>
    public static string PlainText(ContainerInline? inline)
    {
        var text = new StringBuilder();
        foreach (var part in inline?.Descendants() ?? [])
        {
            text.Append(part switch
            {
                LiteralInline literal => literal.Content.AsSpan(),
                CodeInline code => code.Content,
                HtmlEntityInline entity => entity.Transcoded.AsSpan(),
                LineBreakInline => " ",
                _ => "",
            });
        }

        return text.ToString();
    }
}
