using System.Text.Encodings.Web;
using System.Text.Json;

namespace GuideGen.Guide.Findings;

/// <summary>Writes findings as text for people and as JSON for programs. Lines end in LF everywhere.</summary>
public static class FindingFormatter
{
    const string Indent = "    ";

    internal static readonly JsonWriterOptions JsonOptions = new()
    {
        Indented = true,
        NewLine = "\n",
        // For a file or a pipe, never inside HTML: quotes and accents stay readable.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The finding in one line: <c>path(line,column): severity rule: message</c>.</summary>
    public static string ToLine(Finding finding) =>
        $"{finding.Span}: {SeverityWords.Key(finding.Severity)} {finding.Rule.Id}: {Printable.Line(finding.Message)}";

    /// <summary>Each finding in one line; below it, indented, the written line, carets under the place, and what to do.</summary>
    public static void WriteText(TextWriter writer, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            WriteLine(writer, "", ToLine(finding));
            foreach (var line in SourceExcerpt.Of(finding.Span)) WriteLine(writer, Indent, line);
            if (finding.Hint.Length > 0) WriteLine(writer, Indent, Printable.Line(finding.Hint));
        }
    }

    /// <summary>An array of objects in UTF-8; lines and columns count from 1, and the end stands behind the last character.</summary>
    public static void WriteJson(Stream stream, IEnumerable<Finding> findings)
    {
        using var json = new Utf8JsonWriter(stream, JsonOptions);
        json.WriteStartArray();
        foreach (var finding in findings) WriteObject(json, finding);
        json.WriteEndArray();
    }

    static void WriteObject(Utf8JsonWriter json, Finding finding)
    {
        var (from, to) = (finding.Span.From, finding.Span.To);
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule.Id);
        json.WriteString("severity", SeverityWords.Key(finding.Severity));
        json.WriteString("path", finding.Span.Path);
        json.WriteNumber("line", from.Line);
        json.WriteNumber("column", from.Column);
        json.WriteNumber("endLine", to.Line);
        json.WriteNumber("endColumn", to.Column);
        json.WriteString("message", finding.Message);
        json.WriteString("hint", finding.Hint);
        json.WriteString("about", finding.About);
        json.WriteEndObject();
    }

    static void WriteLine(TextWriter writer, string indent, string line)
    {
        writer.Write(indent);
        writer.Write(line);
        writer.Write('\n');
    }
}
