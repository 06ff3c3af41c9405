using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Drafting;

/// <summary>Judges one answer before the page is written.</summary>
public static class DraftAnswer
{
    /// <summary>The findings that a page with this answer alone would have on its line: read and inspected as every page is.</summary>
    public static IEnumerable<Finding> Objections(IGuideFiles guide, ContentKind kind, string key, string answer)
    {
        var path = $"content/{NameKinds.Folder(kind)}/{(kind is ContentKind.Code ? "P0001" : "an-answer")}{NameKinds.Ending(kind)}";
        var loaded = GuideLoader.Load(guide);
        var text = PageDraft.Write(kind, new Dictionary<string, string> { [key] = answer }, loaded.Guide);
        var start = text.IndexOf($"\n{key}: ", StringComparison.Ordinal) + 1;
        var end = text.IndexOf('\n', start);
        return GuideInspector.Inspect(GuideLoader.Load(new AddedFile(guide, path, Encoding.UTF8.GetBytes(text))))
            .Where(f => f.Severity == Severity.Error && f.Span.Path == path && f.Span.Start >= start && f.Span.Start < end);
    }
}
