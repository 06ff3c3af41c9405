using GuideGen.Guide.Text;

namespace GuideGen.Guide.Findings;

/// <summary>One thing that is wrong, or worth a look, at one place.</summary>
/// <param name="About">The hazard, code or name a dismissal can single out; empty if there is none.</param>
public sealed record Finding(Rule Rule, Severity Severity, SourceSpan Span, string Message, string Hint, string About = "")
{
    public Finding Concerning(string about) => this with { About = about };

    public Finding Weighing(Severity severity) => this with { Severity = severity };
}
