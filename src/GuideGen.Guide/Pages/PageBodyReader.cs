using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace GuideGen.Guide.Pages;

/// <summary>Takes from the Markdown of a page what the rules look at.</summary>
public sealed class PageBodyReader
{
    readonly SourceText source;
    readonly int start;
    readonly ImmutableArray<Heading>.Builder headings = ImmutableArray.CreateBuilder<Heading>();
    readonly ImmutableArray<PageLink>.Builder links = ImmutableArray.CreateBuilder<PageLink>();
    readonly ImmutableArray<TextRun>.Builder runs = ImmutableArray.CreateBuilder<TextRun>();
    readonly ImmutableArray<Located<string>>.Builder html = ImmutableArray.CreateBuilder<Located<string>>();
    readonly List<Heading> borders = [];
    int block;
    bool isInHeading;

    PageBodyReader(SourceText source, int start) => (this.source, this.start) = (source, start);

    /// <returns>Null if the Markdown cannot be read; a finding then says why.</returns>
    public static PageBody? Read(SourceText source, int start, FindingList findings, bool allowsHtml = false)
    {
        if (Parse(source, start, findings, allowsHtml) is not { } document) return null;
        var reader = new PageBodyReader(source, start);
        foreach (var item in document.Descendants()) reader.Take(item);
        return new PageBody(start, reader.headings.ToImmutable(), reader.Sections(), reader.links.ToImmutable(), reader.runs.ToImmutable())
        {
            Html = reader.html.ToImmutable(),
            Codes = reader.Codes(),
        };
    }

    static MarkdownDocument? Parse(SourceText source, int start, FindingList findings, bool allowsHtml)
    {
        MarkdownDocument? document = null;
        if (PageScan.DefinitionsOf(source.Text.AsSpan(start)) is { } definitions) Refuse(definitions);
        else if (PageScan.TooDeep(source.Text.AsSpan(start)) is >= 0 and var deep) findings.Add(Rules.TextNesting.At(source.Span(start + deep, 0)));
        else if (!PageMarkdown.TryParse(source.Text[start..], allowsHtml, out document)) findings.Add(Rules.TextNesting.At(source.Span(start, 0)));
        else if (MarkCounter.ExcessOf(document) is { } marks) Refuse(marks);
        else return document;
        return null;

        void Refuse(MarkExcess excess) => findings.Add(Rules.TextMarks.At(source.Span(Math.Min(start + excess.At, source.Text.Length), 0), excess.What));
    }

    void Take(MarkdownObject item)
    {
        switch (item)
        {
            case LeafBlock leaf:
                TakeBlock(leaf);
                break;
            case LinkInline link:
                TakeLink(link);
                break;
            case AutolinkInline auto:
                var address = auto.IsEmail ? "mailto:" + auto.Url : auto.Url;
                links.Add(new PageLink(new(address, Place(auto.Span)), new(auto.Url, Place(auto.Span)), IsPicture: false));
                break;
            case HtmlInline tag:
                html.Add(new(tag.Tag, Place(tag.Span)));
                break;
            case LiteralInline or CodeInline:
                TakeText(item.Span);
                break;
        }
    }

    void TakeBlock(LeafBlock leaf)
    {
        block++;
        isInHeading = leaf is HeadingBlock;
        if (leaf is HtmlBlock raw) html.Add(new(Place(raw.Span).Written, Place(raw.Span)));
        if (leaf is HeadingBlock heading) TakeHeading(heading);
        // Text that is indented too far is code to Markdown and still an instruction to its reader.
        if (leaf is CodeBlock or HtmlBlock) TakeText(leaf.Span);
    }

    void TakeHeading(HeadingBlock heading)
    {
        var taken = new Heading(heading.Level, new(PageMarkdown.PlainText(heading.Inline), Place(heading.Span)), heading.GetAttributes().Id ?? "");
        headings.Add(taken);
        // A heading in a quote or a list does not part the page.
        if (heading is { Level: <= 2, Parent: MarkdownDocument }) borders.Add(taken);
    }

    void TakeLink(LinkInline link)
    {
        var target = link.UrlSpan.IsEmpty ? link.Span : link.UrlSpan;
        links.Add(new PageLink(new(link.Url ?? "", Place(target)), new(PageMarkdown.PlainText(link), Place(link.Span)), link.IsImage));
    }

    void TakeText(Markdig.Syntax.SourceSpan span)
    {
        var place = Place(span);
        if (place.Length > 0) runs.Add(new TextRun(place.Start, place.Length, block, isInHeading));
    }

    ImmutableArray<Section> Sections()
    {
        var sections = ImmutableArray.CreateBuilder<Section>();
        for (var i = 0; i < borders.Count; i++)
        {
            if (borders[i].Level != 2) continue;
            var title = borders[i].Text;
            var end = i + 1 < borders.Count ? borders[i + 1].Text.Span.Start : source.Text.Length;
            sections.Add(new Section(title, title.Span.Start + title.Span.Length, end));
        }

        return sections.ToImmutable();
    }

    ImmutableArray<TroubleCode> Codes()
    {
        var written = from r in runs from c in CodeText.In(source.Text.AsSpan(r.Start, r.Length)) select c.Code;
        return [.. written.OfType<TroubleCode>().Distinct().Order()];
    }

    /// <remarks>To Markdig a fence that is opened in the last line and never closed reaches beyond the text.</remarks>
    Text.SourceSpan Place(Markdig.Syntax.SourceSpan span)
    {
        var from = Math.Min(start + span.Start, source.Text.Length);
        return source.Span(from, Math.Clamp(span.Length, 0, source.Text.Length - from));
    }
}
