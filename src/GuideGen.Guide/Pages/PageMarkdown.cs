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
    public static MarkdownPipeline Pipeline { get; } = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UsePreciseSourceLocation()
        .DisableHtml()
        .Build();

    /// <summary>The syntax tree, with an id on every heading; positions count from the start of the given text.</summary>
    /// <exception cref="ArgumentException">The text is nested too deeply. The loader refuses such pages.</exception>
    public static MarkdownDocument Parse(string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        var anchors = new Anchors();
        foreach (var heading in document.Descendants<HeadingBlock>()) heading.GetAttributes().Id = anchors.Next(PlainText(heading.Inline));
        return document;
    }

    /// <returns>False if the text is nested too deeply, which Markdig tells by an exception.</returns>
    public static bool TryParse(string markdown, [NotNullWhen(true)] out MarkdownDocument? document)
    {
        try
        {
            document = Parse(markdown);
            return true;
        }
        catch (ArgumentException)
        {
            document = null;
            return false;
        }
    }

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
