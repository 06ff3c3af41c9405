using System.Collections.Immutable;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Findings;

/// <summary>One thing that is wrong, or worth a look, at one place.</summary>
/// <param name="About">The hazard, code or name a dismissal can single out; empty if there is none.</param>
public sealed record Finding(Rule Rule, Severity Severity, SourceSpan Span, string Message, string Hint, string About = "")
{
    /// <summary>Paths of the files that it says something about together; empty if it speaks of its own place only.</summary>
    public ImmutableArray<string> RestsOn { get; init; } = [];

    /// <summary>A second page on which its author may dismiss it, and what it is about there.</summary>
    public (string Path, string About)? AlsoOn { get; init; }

    public Finding Concerning(string about) => this with { About = about };

    public Finding Resting(params IEnumerable<string> paths) => this with { RestsOn = [.. paths] };

    public Finding Weighing(Severity severity) => this with { Severity = severity };
}
