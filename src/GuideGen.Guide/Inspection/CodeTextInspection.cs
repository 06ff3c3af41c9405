using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Codes in running text are possible codes, have a meaning, and are spelt so that they can be found and linked.</summary>
sealed class CodeTextInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var bodies = from e in guide.Entries from r in e.Origin.Body.Runs select e.Origin.Source.Span(r.Start, r.Length);
        return CodeUses.Sentences(guide).Select(s => s.Span).Concat(bodies).SelectMany(s => Inspect(guide, s));
    }

    static IEnumerable<Finding> Inspect(GuideContent guide, SourceSpan text)
    {
        var written = text.Source.Text.AsSpan(text.Start, text.Length);
        foreach (var (code, start, length) in CodeText.In(written))
        {
            var span = text.Source.Span(text.Start + start, length);
            var findings = code is { } possible
                ? CodeInspection.Inspect(guide, new(possible, span))
                : [CodeFindings.NotACode(new(span.Written, span))];
            foreach (var finding in findings) yield return finding;
        }
    }
}
