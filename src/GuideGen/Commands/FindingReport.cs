using System.Collections.Immutable;
using GuideGen.Guide.Findings;

namespace GuideGen.Commands;

/// <summary>Prints findings and what they come to.</summary>
static class FindingReport
{
    public static void WriteText(TextWriter output, ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings) output.WriteLine($"{finding.Span}: {finding.Severity} {finding.Rule.Id}: {finding.Message}");
        output.WriteLine(Summary(findings));
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
