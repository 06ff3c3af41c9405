using GuideGen.Guide.Findings;
using GuideGen.Testing;
using Markdig;
using Markdig.Syntax;

namespace GuideGen.Guide.Tests.Rows;

/// <summary>
/// Reads rows from Markdown: a heading of level 2 names the row; fenced blocks are files, by their path
/// ('PATH', 'PATH edit', or 'PATH removed'), and one block 'findings' says what is found, a line each.
/// </summary>
static class RowFile
{
    static readonly string Folder = Repository.PathTo("tests", "GuideGen.Guide.Tests", "Findings");

    public static IEnumerable<Row> All =>
        from file in Directory.GetFiles(Folder, "*.md").Order(StringComparer.Ordinal)
        from row in Read(Path.GetFileNameWithoutExtension(file), File.ReadAllText(file))
        select row;

    /// <summary>The findings as rows state them: the line, and behind a bar what to do.</summary>
    public static string Print(IEnumerable<Finding> findings) =>
        string.Join('\n', findings.Select(f => $"{FindingFormatter.ToLine(f)} | {f.Hint}"));

    static IEnumerable<Row> Read(string file, string markdown)
    {
        Row? row = null;
        foreach (var block in Markdown.Parse(markdown))
        {
            if (block is HeadingBlock { Level: 2 } heading)
            {
                if (row is not null) yield return row;
                row = new Row($"{file}: {markdown.Substring(heading.Span.Start + 3, heading.Span.Length - 3)}", [], [], "");
            }
            else if (block is FencedCodeBlock fence && row is not null)
            {
                row = With(row, fence, fence.Lines.ToString());
            }
        }

        if (row is not null) yield return row;
    }

    static Row With(Row row, FencedCodeBlock fence, string text)
    {
        if (fence.Info == "findings") return row with { Expected = text };
        if (fence.Arguments == "edit") row.Edits.Add(fence.Info!, text);
        else row.Files.Add(fence.Info!, fence.Arguments == "removed" ? null : text.Length == 0 ? "" : text + "\n");
        return row;
    }
}
