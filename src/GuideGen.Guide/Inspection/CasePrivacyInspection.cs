using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>A case tells of a vehicle, not of its owner: nothing in its texts leads to a person.</summary>
sealed class CasePrivacyInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Cases.SelectMany(Texts).SelectMany(Inspect);

    static IEnumerable<Located<string>> Texts(SolvedCase solved) =>
    [
        .. solved.Work.Changed,
        .. solved.Work.Tried.Select(t => t.What),
        .. solved.Freeze.SelectMany(f => new[] { f.Key, f.Value }),
        .. solved.Note is { } note ? [note] : Array.Empty<Located<string>>(),
    ];

    static IEnumerable<Finding> Inspect(Located<string> text) =>
        PersonalData.In(text.Value).Select(p => Rules.CasePersonal.At(SpanOf(text.Span, p.Written), p.Written, p.Kind).Concerning(p.Written));

    /// <summary>Quotes and escapes may stand between a value and what was written; then the whole value is shown.</summary>
    static SourceSpan SpanOf(SourceSpan whole, string written)
    {
        var at = whole.Written.IndexOf(written, StringComparison.Ordinal);
        return at < 0 ? whole : whole.Source.Span(whole.Start + at, written.Length);
    }
}
