using Markdig;
using Markdig.Helpers;
using Markdig.Parsers;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace GuideGen.Guide.Pages;

/// <summary>Where a page has more marks than it may, and of what kind.</summary>
/// <param name="At">Offset in the Markdown.</param>
public sealed record MarkExcess(int At, string What);

/// <summary>
/// Counts the marks of each paragraph and table while they are read, and reads no further where they are too many: pairing
/// them costs the square of their number, so that a page of a few hundred kilobytes could hold up a compile for minutes.
/// </summary>
sealed class MarkCounter : InlineParser, IMarkdownExtension
{
    static readonly object Key = new();

    public MarkCounter() => OpeningCharacters = ['*', '_', '[', ']', '<', '`', '|'];

    public static MarkExcess? ExcessOf(MarkdownDocument document) => (document.GetData(Key) as Count)?.Excess;

    public override bool Match(InlineProcessor processor, ref StringSlice slice)
    {
        var count = CountOf(processor);
        if (count.Take(ref slice) is not { } what) return false;
        count.Excess ??= new MarkExcess(processor.GetSourcePosition(slice.Start), what);
        // The page is refused: what is left of the block only has to be passed over.
        processor.Inline = new LiteralInline(new StringSlice(slice.Text, slice.Start, slice.End));
        slice.Start = slice.End + 1;
        return true;
    }

    static Count CountOf(InlineProcessor processor)
    {
        if (processor.Document.GetData(Key) is not Count count) processor.Document.SetData(Key, count = new Count());
        count.Enter(processor.Block);
        return count;
    }

    public void Setup(MarkdownPipelineBuilder pipeline) => pipeline.InlineParsers.Insert(0, this);

    public void Setup(MarkdownPipeline pipeline, IMarkdownRenderer renderer)
    {
    }

    /// <summary>How far the reading of one page has come.</summary>
    sealed class Count
    {
        LeafBlock? block;
        int inPage;
        int inBlock;
        long reach;
        int bars;
        int barsOnLine;
        int lastBar;

        public MarkExcess? Excess { get; set; }

        public void Enter(LeafBlock? current)
        {
            if (current == block) return;
            (block, inBlock, bars, barsOnLine, lastBar) = (current, 0, 0, 0, 0);
        }

        /// <returns>What there is too much of, or null.</returns>
        public string? Take(ref StringSlice slice)
        {
            if (slice.CurrentChar == '|') return TakeBar(ref slice);
            if ((reach += slice.Length) > GuideLimits.ReachOfMarks) return $"{GuideLimits.ReachOfMarks / 1_000_000} million characters to look through for the ends of links and tags";
            if (++inPage > GuideLimits.MarksInPage) return $"{GuideLimits.MarksInPage} marks of emphasis, links or tags in one page";
            return ++inBlock > GuideLimits.MarksInBlock ? $"{GuideLimits.MarksInBlock} marks of emphasis, links or tags in one paragraph or table" : null;
        }

        string? TakeBar(ref StringSlice slice)
        {
            barsOnLine = lastBar <= slice.Start && slice.Text.AsSpan(lastBar, slice.Start - lastBar).Contains('\n') ? 1 : barsOnLine + 1;
            lastBar = slice.Start;
            if (barsOnLine > GuideLimits.BarsInLine) return $"{GuideLimits.BarsInLine} bars on one line";
            return ++bars > GuideLimits.BarsInBlock ? $"{GuideLimits.BarsInBlock} bars in one paragraph or table" : null;
        }
    }
}
