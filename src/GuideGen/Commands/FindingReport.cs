using System.Collections.Immutable;
using System.Text;
using GuideGen.Guide.Findings;

namespace GuideGen.Commands;

/// <summary>Prints findings and what they come to.</summary>
static class FindingReport
{
    public static void WriteText(TextWriter output, ImmutableArray<Finding> findings)
    {
        FindingFormatter.WriteText(output, findings);
        output.WriteLine(Summary(findings));
    }

    /// <summary>The array alone, so that another program can read all that is printed.</summary>
    public static void WriteJson(TextWriter output, ImmutableArray<Finding> findings)
    {
        using var json = new MemoryStream();
        FindingFormatter.WriteJson(json, findings);
        output.WriteLine(Encoding.UTF8.GetString(json.GetBuffer(), 0, (int)json.Length));
    }

    public static int ExitCodeOf(ImmutableArray<Finding> findings) =>
        findings.Any(f => f.Severity == Severity.Error) ? ExitCode.Findings : ExitCode.Good;

    static string Summary(ImmutableArray<Finding> findings)
    {
        int Count(Severity severity) => findings.Count(f => f.Severity == severity);
        return $"{Plural(Count(Severity.Error), "error")}, {Plural(Count(Severity.Warning), "warning")}, {Plural(Count(Severity.Note), "note")}";
    }

    static string Plural(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";
}
