using GuideGen.Guide.Text;

namespace GuideGen.Guide.Findings;

/// <summary>The line that a finding points into, and a line of carets under the place.</summary>
static class SourceExcerpt
{
    /// <summary>The most characters of a line that are shown.</summary>
    const int Width = 100;

    /// <summary>Where the place stands in a line that is cut on the left.</summary>
    const int Lead = 30;

    const char Ellipsis = '…';

    /// <returns>Two lines, or none if there is nothing to show: the file is empty or could not be read.</returns>
    public static IReadOnlyList<string> Of(SourceSpan span)
    {
        if (span.Source.Text.Length == 0) return [];
        var from = span.From;
        var line = Printable.Line(span.Source.Line(from.Line));
        var place = Math.Min(from.Column - 1, line.Length);
        var first = line.Length > Width ? Math.Clamp(place - Lead, 0, line.Length - Width) : 0;
        var shown = Cut(line, first);
        var carets = new string('^', Math.Clamp(span.Length, 1, Math.Max(1, shown.Length - (place - first))));
        return [shown, Margin(shown, place - first) + carets];
    }

    static string Cut(string line, int first)
    {
        if (line.Length <= Width) return line;
        var shown = line.Substring(first, Width).ToCharArray();
        if (first > 0) shown[0] = Ellipsis;
        if (first + Width < line.Length) shown[^1] = Ellipsis;
        return new string(shown);
    }

    /// <summary>As wide as what stands before the place: tabs stay tabs, whatever width the terminal gives them.</summary>
    static string Margin(string shown, int place) => string.Concat(shown.Take(place).Select(c => c == '\t' ? '\t' : ' '));
}
