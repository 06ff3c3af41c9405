namespace GuideGen.Guide.Text;

/// <summary>The decoded text of one file of the guide, and where its lines begin.</summary>
/// <remarks>A line ends at LF, CR LF or a lone CR; the line break belongs to the line it ends.</remarks>
public sealed class SourceText
{
    // Most texts are never asked for a place.
    int[]? found;

    /// <param name="path">Relative to the guide's folder, with forward slashes.</param>
    /// <param name="text">The decoded text, without byte order mark.</param>
    public SourceText(string path, string text)
    {
        Path = path;
        Text = text;
    }

    public string Path { get; }

    public string Text { get; }

    public int LineCount => LineStarts.Length;

    int[] LineStarts => found ??= FindLineStarts(Text);

    /// <param name="offset">0 to the length of the text, inclusive.</param>
    public TextPosition PositionAt(int offset)
    {
        var at = Array.BinarySearch(LineStarts, offset);
        var line = at >= 0 ? at : ~at - 1;
        return new TextPosition(line + 1, offset - LineStarts[line] + 1);
    }

    /// <summary>The offset at which a line, counted from 1, begins.</summary>
    public int StartOf(int line) => LineStarts[line - 1];

    /// <summary>The text of a line, counted from 1, without its line break.</summary>
    public ReadOnlySpan<char> Line(int line)
    {
        var start = LineStarts[line - 1];
        var end = line < LineStarts.Length ? LineStarts[line] : Text.Length;
        return Text.AsSpan(start, end - start).TrimEnd("\r\n");
    }

    public SourceSpan Span(int start, int length) => new(this, start, length);

    /// <summary>The very beginning of the file: where a finding about the whole file points.</summary>
    public SourceSpan Top => new(this, 0, 0);

    /// <summary>Behind the last text of the file: where a finding about something missing below points.</summary>
    public SourceSpan Bottom => new(this, Text.AsSpan().TrimEnd().Length, 0);

    static int[] FindLineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = 0; i < text.Length; i++)
        {
            var isBreak = text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            if (isBreak) starts.Add(i + 1);
        }

        return [.. starts];
    }
}
