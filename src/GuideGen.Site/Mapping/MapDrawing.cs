using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Mapping;

/// <param name="IsGuest">It lies in another path and hands over to this one.</param>
sealed record MapPart(string Id, string Name, string Href, bool IsGuest, ImmutableArray<string> After);

/// <param name="Title">What flows along it.</param>
sealed record MapLane(string Title, ImmutableArray<MapPart> Parts);

/// <summary>The map of a vehicle: a lane for each path, boxes in the order of flow, lines within a lane only, so that none cross a heading.</summary>
sealed class MapDrawing
{
    // In the drawing's units, which are CSS pixels at full size. Letters are taken at their average width.
    const int Left = 12, ColumnWidth = 158, BoxWidth = 130, RowHeight = 62, BoxHeight = 50, Heading = 34, LaneGap = 16, LineHeight = 15;
    const int LettersInLine = 15, MostLines = 3;

    readonly StringBuilder shapes = new();
    int width;
    int height;

    MapDrawing()
    {
    }

    public static HtmlText Of(IEnumerable<MapLane> lanes, string title, string description)
    {
        var drawing = new MapDrawing();
        foreach (var lane in lanes) drawing.Add(lane);
        var (w, h) = (drawing.width + Left, drawing.height);
        return new HtmlText(
            $"<svg class=\"part-map\" viewBox=\"0 0 {w} {h}\" width=\"{w}\" height=\"{h}\" role=\"group\" aria-labelledby=\"_map-title _map-words\">"
            + $"<title id=\"_map-title\">{HtmlText.Escape(title)}</title><desc id=\"_map-words\">{HtmlText.Escape(description)}</desc>{drawing.shapes}</svg>");
    }

    void Add(MapLane lane)
    {
        var places = LaneLayout.Of([.. lane.Parts.Select(p => new LanePart(p.Id, p.After))]).ToDictionary(p => p.Id, StringComparer.Ordinal);
        var top = height + Heading;
        shapes.Append(CultureInfo.InvariantCulture, $"<path class=\"lane-mark\" d=\"M{Left + 4} {height + 8}h6l-4 16h-6z\"/><text class=\"lane-name\" x=\"{Left + 18}\" y=\"{height + 22}\">{HtmlText.Escape(lane.Title)}</text>");
        foreach (var part in lane.Parts)
        {
            foreach (var before in part.After) Line(places[before], places[part.Id], top);
        }

        foreach (var part in lane.Parts) Box(part, places[part.Id], top);
        width = Math.Max(width, places.Values.Max(p => X(p) + BoxWidth));
        height = top + (places.Values.Max(p => p.Row) + 1) * RowHeight + LaneGap;
    }

    void Line(LanePlace from, LanePlace to, int top)
    {
        var (x1, y1, x2, y2) = (X(from) + BoxWidth, Middle(from, top), X(to), Middle(to, top));
        var turn = x2 - (ColumnWidth - BoxWidth) / 2;
        shapes.Append(CultureInfo.InvariantCulture, $"<path class=\"lane-line\" d=\"M{x1} {y1}H{turn}V{y2}H{x2 - 2}m-6 -4l6 4l-6 4\"/>");
    }

    void Box(MapPart part, LanePlace place, int top)
    {
        var (x, y, lines) = (X(place), Middle(place, top) - BoxHeight / 2, Lines(part.Name));
        shapes.Append(CultureInfo.InvariantCulture, $"<a href=\"{HtmlText.Escape(part.Href)}\" class=\"lane-part{(part.IsGuest ? " lane-guest" : "")}\"><title>{HtmlText.Escape(part.Name)}</title><rect x=\"{x}\" y=\"{y}\" width=\"{BoxWidth}\" height=\"{BoxHeight}\" rx=\"4\"/>");
        var first = y + BoxHeight / 2 + 5 - (lines.Count - 1) * LineHeight / 2;
        foreach (var (line, i) in lines.Select((l, i) => (l, i))) shapes.Append(CultureInfo.InvariantCulture, $"<text x=\"{x + BoxWidth / 2}\" y=\"{first + i * LineHeight}\">{HtmlText.Escape(line)}</text>");
        shapes.Append("</a>");
    }

    static int X(LanePlace place) => Left + place.Column * ColumnWidth;

    static int Middle(LanePlace place, int top) => top + place.Row * RowHeight + RowHeight / 2;

    /// <summary>A name in at most three lines, broken at blanks and hyphens; what does not fit is cut, and stands whole in the title.</summary>
    static List<string> Lines(string name)
    {
        var lines = new List<string> { "" };
        foreach (var word in name.Replace("-", "-\u200b", StringComparison.Ordinal).Split(' ', '\u200b'))
        {
            var joined = lines[^1] is "" or [.., '-'] ? lines[^1] + word : lines[^1] + " " + word;
            if (joined.Length <= LettersInLine || lines[^1].Length == 0) lines[^1] = joined;
            else lines.Add(word);
        }

        if (lines.Count > MostLines) lines[MostLines - 1] += " …";
        return lines[..Math.Min(lines.Count, MostLines)];
    }
}
