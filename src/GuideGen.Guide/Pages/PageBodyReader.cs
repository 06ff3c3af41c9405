using System.Collections.Immutable;
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
    readonly List<int> headingEnds = [];
    int block;

    PageBodyReader(SourceText source, int start) => (this.source, this.start) = (source, start);

    public static PageBody Read(SourceText source, int start)
    {
        var reader = new PageBodyReader(source, start);
        foreach (var item in PageMarkdown.Parse(source.Text[start..]).Descendants()) reader.Take(item);
        return new PageBody(start, reader.headings.ToImmutable(), reader.Sections(), reader.links.ToImmutable(), reader.runs.ToImmutable());
    }

    void Take(MarkdownObject item)
    {
        switch (item)
        {
            case HeadingBlock heading:
                block++;
                headings.Add(new Heading(heading.Level, new(PageMarkdown.PlainText(heading.Inline), Place(heading.Span)), heading.GetAttributes().Id ?? ""));
                headingEnds.Add(start + heading.Span.End + 1);
                break;
            case LeafBlock:
                block++;
                break;
            case LinkInline link:
                TakeLink(link);
                break;
            case AutolinkInline auto:
                links.Add(new PageLink(new(auto.Url, Place(auto.Span)), new(auto.Url, Place(auto.Span)), IsPicture: false));
                break;
            case LiteralInline or CodeInline:
                TakeText(item.Span);
                break;
        }
    }

    void TakeLink(LinkInline link)
    {
        var target = link.UrlSpan.IsEmpty ? link.Span : link.UrlSpan;
        links.Add(new PageLink(new(link.Url ?? "", Place(target)), new(PageMarkdown.PlainText(link), Place(link.Span)), link.IsImage));
    }

    void TakeText(Markdig.Syntax.SourceSpan span)
    {
        if (span.Length > 0) runs.Add(new TextRun(start + span.Start, span.Length, block));
    }

    ImmutableArray<Section> Sections()
    {
        var sections = ImmutableArray.CreateBuilder<Section>();
        for (var i = 0; i < headings.Count; i++)
        {
            if (headings[i].Level != 2) continue;
            var next = headings.Skip(i + 1).FirstOrDefault(h => h.Level <= 2);
            sections.Add(new Section(headings[i].Text, headingEnds[i], next?.Text.Span.Start ?? source.Text.Length));
        }

        return sections.ToImmutable();
    }

    Text.SourceSpan Place(Markdig.Syntax.SourceSpan span) => source.Span(start + span.Start, Math.Max(0, span.Length));
}
