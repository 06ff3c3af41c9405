using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Site.Pictures;
using GuideGen.Site.Planning;
using GuideGen.Site.Views;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace GuideGen.Site.Rendering;

/// <summary>A section of a page, drawn.</summary>
public sealed record DrawnSection(string Title, string Anchor, HtmlText Html);

/// <summary>Draws the Markdown of a page, section by section, with its links turned into addresses and its codes linked.</summary>
public static class BodyRenderer
{
    /// <returns>The sections in order; what stands before the first heading comes first, without a title.</returns>
    public static IReadOnlyList<DrawnSection> Draw(IGuideEntry entry, PageLinks links, PhraseFinder<string> terms)
    {
        var body = entry.Origin.Body;
        var document = PageMarkdown.Parse(entry.Origin.Source.Text[body.Start..], allowsHtml: links.Cleaner is not null);
        foreach (var link in document.Descendants<LinkInline>().ToList()) Redirect(link, entry, links);
        foreach (var link in document.Descendants<AutolinkInline>()) MarkOutside(link);
        foreach (var table in document.Descendants<Table>()) AlignByClass(table);
        foreach (var text in document.Descendants<LiteralInline>().ToList()) LinkCodes(text, links);
        TermLinker.Link(document, terms, links.To(Addresses.Terms));
        var sections = DrawSections(document);
        return links.Cleaner is { } cleaner ? sections.ConvertAll(s => s with { Html = cleaner.Clean(s.Html) }) : sections;
    }

    static List<DrawnSection> DrawSections(MarkdownDocument document)
    {
        var sections = new List<DrawnSection>();
        var (title, anchor, blocks) = ("", "", new List<Block>());
        foreach (var block in document)
        {
            if (block is HeadingBlock { Level: 2 } heading)
            {
                Close();
                (title, anchor, blocks) = (PageMarkdown.PlainText(heading.Inline), heading.GetAttributes().Id ?? "", []);
            }
            else
            {
                blocks.Add(block);
            }
        }

        Close();
        return sections;

        void Close()
        {
            if (title.Length > 0 || blocks.Count > 0) sections.Add(new DrawnSection(title, anchor, DrawBlocks(blocks)));
        }
    }

    static HtmlText DrawBlocks(IEnumerable<Block> blocks)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        PageMarkdown.Pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<HtmlTableRenderer>(new ScrollingTableRenderer());
        foreach (var block in blocks) renderer.Render(block);
        return new HtmlText(writer.ToString());
    }

    static void Redirect(LinkInline link, IGuideEntry entry, PageLinks links)
    {
        if (link.IsImage) PictureAttributes.AddTo(link, links.PictureOf(entry, link.Url ?? ""));
        link.Url = links.AddressOf(entry, link.Url ?? "");
        if (link.IsImage) return;
        if (link.Url.Contains(':', StringComparison.Ordinal)) MarkOutside(link);
    }

    static void MarkOutside(MarkdownObject link) => link.GetAttributes().AddPropertyIfNotExist("rel", "external noopener");

    /// <summary>Markdig would write a style attribute, which a strict content security policy forbids.</summary>
    static void AlignByClass(Table table)
    {
        foreach (var row in table.OfType<TableRow>())
        {
            foreach (var (cell, column) in row.OfType<TableCell>().Zip(table.ColumnDefinitions))
            {
                if (column.Alignment is TableColumnAlign.Right) cell.GetAttributes().AddClass("align-end");
                if (column.Alignment is TableColumnAlign.Center) cell.GetAttributes().AddClass("align-centre");
            }
        }

        foreach (var column in table.ColumnDefinitions) column.Alignment = null;
    }

    static void LinkCodes(LiteralInline text, PageLinks links)
    {
        if (text.FindParentOfType<LinkInline>().Any()) return;
        var content = text.Content.ToString();
        var next = 0;
        foreach (var (code, start, length) in CodeText.In(content))
        {
            if (code is not { } known || links.Of(known) is not { } address) continue;
            if (start > next) text.InsertBefore(new LiteralInline(content[next..start]));
            var link = new LinkInline(address, "") { IsClosed = true };
            link.GetAttributes().AddClass("code");
            link.AppendChild(new LiteralInline(content.Substring(start, length)));
            text.InsertBefore(link);
            next = start + length;
        }

        if (next > 0) text.ReplaceBy(new LiteralInline(content[next..]));
    }

    /// <summary>A wide table scrolls in its own box, by keys as well, so that the page never does.</summary>
    sealed class ScrollingTableRenderer : HtmlTableRenderer
    {
        protected override void Write(HtmlRenderer renderer, Table table)
        {
            renderer.EnsureLine();
            renderer.Write("<div class=\"scroller\" tabindex=\"0\">");
            base.Write(renderer, table);
            renderer.WriteLine("</div>");
        }
    }
}
