using System.Collections.Immutable;
using System.Text;
using GuideGen.Guide.Findings;

namespace GuideGen.Commands;

/// <summary>Prints findings and what they come to, in the format that was asked for.</summary>
/// <param name="prefix">Leads from where the reader stands to the guide; empty, or ending in a slash.</param>
sealed class FindingReport(Terminal terminal, string format, string prefix)
{
    /// <summary>What is printed in a format for programs can be read as a whole; annotations are lines of a log, so that words may follow.</summary>
    public void Write(ImmutableArray<Finding> findings)
    {
        switch (format)
        {
            case OutputFormat.Json:
                terminal.Out.WriteLine(Utf8(stream => FindingFormatter.WriteJson(stream, findings)));
                break;
            case OutputFormat.Sarif:
                terminal.Out.WriteLine(Utf8(stream => new SarifWriter(prefix).Write(stream, findings)));
                break;
            case OutputFormat.Annotations:
                new AnnotationWriter(prefix).Write(terminal.Out, findings);
                break;
            default:
                FindingFormatter.WriteText(terminal.Out, findings);
                break;
        }

        if (!IsForPrograms) terminal.Out.WriteLine(Summary(findings));
    }

    /// <summary>Words for people; they keep out of what a program reads.</summary>
    public void Say(string words) => (IsForPrograms ? terminal.Error : terminal.Out).WriteLine(words);

    bool IsForPrograms => format is OutputFormat.Json or OutputFormat.Sarif;

    public static int ExitCodeOf(ImmutableArray<Finding> findings) =>
        findings.Any(f => f.Severity == Severity.Error) ? ExitCode.Findings : ExitCode.Good;

    static string Utf8(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    static string Summary(ImmutableArray<Finding> findings)
    {
        int Count(Severity severity) => findings.Count(f => f.Severity == severity);
        return $"{Plural(Count(Severity.Error), "error")}, {Plural(Count(Severity.Warning), "warning")}, {Plural(Count(Severity.Note), "note")}";
    }

    static string Plural(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";
}
