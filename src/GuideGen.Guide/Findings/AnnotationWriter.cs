using System.Globalization;

namespace GuideGen.Guide.Findings;

/// <summary>Findings as workflow commands, which the runners of the usual code hosts show beside the changed line.</summary>
/// <param name="prefix">Goes before the path of every file, so that it counts from the repository's root; empty, or ending in a slash.</param>
public sealed class AnnotationWriter(string prefix)
{
    /// <summary>A line for each finding: <c>::error file=…,line=…,col=…,title=…::message</c>.</summary>
    public void Write(TextWriter writer, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings) writer.Write(Line(finding) + "\n");
    }

    string Line(Finding finding)
    {
        var (from, to) = (finding.Span.From, finding.Span.To);
        (string Name, string Value)[] properties =
        [
            ("file", prefix + finding.Span.Path),
            ("line", Number(from.Line)),
            ("endLine", Number(to.Line)),
            ("col", Number(from.Column)),
            // A last column only makes sense to the runners within one line, and they count it in.
            ("endColumn", to.Line == from.Line ? Number(Math.Max(from.Column, to.Column - 1)) : ""),
            ("title", $"{finding.Rule.Id}: {finding.Rule.Title}"),
        ];
        var written = properties.Where(p => p.Value.Length > 0).Select(p => $"{p.Name}={EscapeProperty(p.Value)}");
        return $"::{Command(finding.Severity)} {string.Join(',', written)}::{Escape($"{finding.Message}\n{finding.Hint}".TrimEnd())}";
    }

    static string Command(Severity severity) => severity is Severity.Note ? "notice" : SeverityWords.Key(severity);

    static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The per cent sign first, or it would escape the escapes. Text of an author cannot begin a command of its own.</summary>
    static string Escape(string text) => text
        .Replace("%", "%25", StringComparison.Ordinal)
        .Replace("\r", "%0D", StringComparison.Ordinal)
        .Replace("\n", "%0A", StringComparison.Ordinal);

    static string EscapeProperty(string text) => Escape(text)
        .Replace(":", "%3A", StringComparison.Ordinal)
        .Replace(",", "%2C", StringComparison.Ordinal);
}
