using GuideGen.Guide.Pages;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace GuideGen.Site.Rendering;

/// <summary>Links a trade word to its plain words where a page uses it first; later uses stay as they are, or the page would be all links.</summary>
static class TermLinker
{
    /// <param name="terms">The words to link, each with its place on the page of terms.</param>
    /// <param name="address">The way from the page to the page of terms.</param>
    public static void Link(MarkdownDocument document, PhraseFinder<string> terms, string address)
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        foreach (var text in document.Descendants<LiteralInline>().Where(IsRunningText).ToList())
        {
            var content = text.Content.ToString();
            var words = Words.Whole(content);
            var found = terms.Find(words).OrderBy(f => f.Start).ThenByDescending(f => f.Length).Where(f => met.Add(f.Tag)).ToList();
            if (found.Count > 0) Link(text, content, found, address);
        }
    }

    static bool IsRunningText(LiteralInline text) => !text.FindParentOfType<LinkInline>().Any() && Block(text) is ParagraphBlock;

    static LeafBlock? Block(Inline inline)
    {
        ContainerInline? top = inline.Parent;
        while (top?.Parent is { } parent) top = parent;
        return top?.ParentBlock;
    }

    static void Link(LiteralInline text, string content, List<FoundPhrase<string>> found, string address)
    {
        var next = 0;
        foreach (var (_, anchor, start, length) in found)
        {
            // Two words of the book may overlap; the first one has it.
            if (start < next) continue;
            if (start > next) text.InsertBefore(new LiteralInline(content[next..start]));
            var link = new LinkInline($"{address}#{anchor}", "") { IsClosed = true };
            link.GetAttributes().AddClass("term");
            link.AppendChild(new LiteralInline(content.Substring(start, length)));
            text.InsertBefore(link);
            next = start + length;
        }

        text.ReplaceBy(new LiteralInline(content[next..]));
    }
}
