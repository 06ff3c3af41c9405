using GuideGen.Codes.Reading;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Codes in running text are possible codes, have a meaning, and are spelt so that they can be found and linked.</summary>
sealed class CodeTextInspection : IInspection, IPageInspection
{
    /// <summary>In terms and cases.</summary>
    public IEnumerable<Finding> Inspect(GuideContent guide) => CodeUses.SentencesOutsidePages(guide).SelectMany(s => Inspect(guide, s.Span));

    /// <summary>In the front matter and the text of a page, and in a tree.</summary>
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide) =>
        entry => CodeUses.Sentences(entry).Select(s => s.Span).Concat(entry.Origin.Body.Runs.Select(r => entry.Origin.Source.Span(r.Start, r.Length))).SelectMany(s => Inspect(guide, s));

    static IEnumerable<Finding> Inspect(GuideContent guide, SourceSpan text)
    {
        // No text without a digit is a code or meant as one.
        if (!text.Source.Text.AsSpan(text.Start, text.Length).ContainsAnyInRange('0', '9')) return [];
        var loose = Loose(text).ToList();
        return loose.Concat(Exact(guide, text).Where(f => loose.TrueForAll(l => l.Span.Start != f.Span.Start)));
    }

    static IEnumerable<Finding> Exact(GuideContent guide, SourceSpan text)
    {
        foreach (var (code, start, length) in CodeText.In(text.Written))
        {
            var span = text.Source.Span(text.Start + start, length);
            var findings = code is { } possible
                ? CodeInspection.Inspect(guide, new(possible, span))
                : [CodeFindings.NotACode(new(span.Written, span))];
            foreach (var finding in findings) yield return finding;
        }
    }

    /// <summary>Only what is surely meant as a code; the bytes of a raw answer are shown as they are.</summary>
    static IEnumerable<Finding> Loose(SourceSpan text) =>
        from find in CodeReader.Read(text.Written, ReadingPlace.FreeText).Finds
        let code = find.Code.ToString()
        where find.Certainty != Certainty.Guess && char.IsLetter(find.Written[0]) && !find.Written.StartsWith(code, StringComparison.Ordinal)
        let span = text.Source.Span(text.Start + find.Start, find.Length)
        select Rules.CodeLoose.At(span, find.Written, find.Reported.ToString()).Concerning(code);
}
