using System.Globalization;
using System.Text;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Views;

/// <summary>What a tree's drawing shows of a step.</summary>
/// <param name="Number">As on the page.</param>
/// <param name="Anchor">Where it stands on the page.</param>
/// <param name="Kind">Becomes part of a class.</param>
/// <param name="Text">Its words.</param>
/// <param name="Ways">The answers with the anchors they lead to.</param>
sealed record DrawnStep(int Number, string Anchor, string Kind, string Text, IReadOnlyList<(string Answer, string To)> Ways);

/// <summary>
/// A tree as a drawing: a row for each step, set in by its depth, with a line from the step that leads there. Where a
/// step is come to again, its number stands instead of a second branch, so no lines cross.
/// </summary>
sealed class TreeDrawing
{
    // In the drawing's units, which are CSS pixels at full size; letters as in the theme's style for drawings.
    const int Indent = 26, Edge = 12, LongestText = 52, LongestAnswer = 28;
    const double Letters = 14, SmallLetters = 12.5;

    // Where there are many steps, rows stand as close as a finger still allows (WCAG 2.2, 2.5.8: 24 pixels), so that the drawing
    // can be read on one printed page.
    const int ManySteps = 40;

    readonly int rowHeight, boxHeight;
    readonly Dictionary<string, DrawnStep> steps;
    readonly HashSet<string> drawn = new(StringComparer.Ordinal);
    readonly StringBuilder lines = new();
    readonly StringBuilder boxes = new();
    double width;
    int rows;

    TreeDrawing(IReadOnlyCollection<DrawnStep> steps)
    {
        this.steps = steps.ToDictionary(s => s.Anchor, StringComparer.Ordinal);
        (rowHeight, boxHeight) = steps.Count > ManySteps ? (26, 24) : (38, 28);
    }

    /// <param name="title">What the drawing is called.</param>
    /// <param name="description">Says in words what the drawing shows.</param>
    public static HtmlText Of(IReadOnlyList<DrawnStep> steps, string title, string description)
    {
        var drawing = new TreeDrawing(steps);
        drawing.Row(steps[0], null, 0);
        var size = string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(drawing.width) + Edge} {drawing.rows * drawing.rowHeight + Edge}");
        var (w, h) = (size.Split(' ')[0], size.Split(' ')[1]);
        return new HtmlText(
            $"<svg class=\"tree-drawing\" viewBox=\"0 0 {size}\" width=\"{w}\" height=\"{h}\" role=\"group\" aria-labelledby=\"_map-title _map-words\">"
            + $"<title id=\"_map-title\">{HtmlText.Escape(title)}</title><desc id=\"_map-words\">{HtmlText.Escape(description)}</desc>"
            + $"<path class=\"map-lines\" d=\"{drawing.lines}\"/>{drawing.boxes}</svg>");
    }

    /// <returns>The middle of the row.</returns>
    int Row(DrawnStep step, string? answer, int depth)
    {
        drawn.Add(step.Anchor);
        var (x, y) = ((double)(Edge + depth * Indent), Edge + rows++ * rowHeight + boxHeight / 2);
        if (answer is not null) x = Words(x, y, answer);
        x = BoxOf(step, x, y);
        foreach (var again in step.Ways.Where(w => drawn.Contains(w.To)).GroupBy(w => w.To).ToList()) x = Again(x, y, string.Join(" / ", again.Select(w => w.Answer)), steps[again.Key]);
        width = Math.Max(width, x);
        foreach (var (words, to) in step.Ways)
        {
            if (drawn.Contains(to)) continue;
            var down = Row(steps[to], words, depth + 1);
            lines.Append(CultureInfo.InvariantCulture, $"M{Edge + depth * Indent + Indent / 2} {y + boxHeight / 2}V{down - 6}q0 6 6 6h{Indent / 2 - 8}");
        }

        return y;
    }

    double Words(double x, int y, string answer)
    {
        var text = Shortened(answer, LongestAnswer);
        boxes.Append(CultureInfo.InvariantCulture, $"<text class=\"map-answer\" x=\"{x + 2:0.#}\" y=\"{y + 4}\">{HtmlText.Escape(text)}</text>");
        return x + TextWidths.Of(text, SmallLetters) + 10;
    }

    double BoxOf(DrawnStep step, double x, int y)
    {
        var text = $"{step.Number}  {Shortened(step.Text, LongestText)}";
        var wide = TextWidths.Of(text, Letters, bold: step.Kind == "fault") + 22;
        boxes.Append(CultureInfo.InvariantCulture, $"<a href=\"#{step.Anchor}\" class=\"map-step map-{step.Kind}\"><title>{HtmlText.Escape($"{step.Number}. {step.Text}")}</title>")
            .Append(CultureInfo.InvariantCulture, $"<rect x=\"{x:0.#}\" y=\"{y - boxHeight / 2}\" width=\"{wide:0.#}\" height=\"{boxHeight}\" rx=\"{(step.Kind == "ask" ? boxHeight / 2 : 4)}\"/>")
            .Append(CultureInfo.InvariantCulture, $"<text x=\"{x + 11:0.#}\" y=\"{y + 5}\">{HtmlText.Escape(text)}</text></a>");
        return x + wide + 8;
    }

    double Again(double x, int y, string answer, DrawnStep to)
    {
        var text = $"→ {to.Number}";
        boxes.Append(CultureInfo.InvariantCulture, $"<a href=\"#{to.Anchor}\" class=\"map-again\"><title>{HtmlText.Escape($"{answer}: {to.Number}. {to.Text}")}</title><text x=\"{x + 4:0.#}\" y=\"{y + 4}\">{HtmlText.Escape(text)}</text></a>");
        return x + TextWidths.Of(text, SmallLetters) + 14;
    }

    static string Shortened(string text, int most) => text.Length <= most ? text : text[..(most - 1)].TrimEnd() + "…";
}
