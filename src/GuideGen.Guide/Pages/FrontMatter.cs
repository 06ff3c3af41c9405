using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pages;

/// <summary>Where the front matter of a page stands: between a first line of three hyphens and the next such line.</summary>
public readonly record struct FrontMatter(int Start, int Length, int BodyStart)
{
    public static FrontMatter? Find(SourceText source, FindingList findings)
    {
        if (!IsFence(source, 1))
        {
            findings.Add(Rules.FrontMatterMissing.At(source.Top));
            return null;
        }

        for (var line = 2; line <= source.LineCount; line++)
        {
            if (!IsFence(source, line)) continue;
            var start = LineStart(source, 2);
            return new FrontMatter(start, LineStart(source, line) - start, LineStart(source, line + 1));
        }

        findings.Add(Rules.FrontMatterUnclosed.At(source.Span(0, 3)));
        return null;
    }

    static bool IsFence(SourceText source, int line) => source.Line(line).TrimEnd() is "---";

    static int LineStart(SourceText source, int line) =>
        line > source.LineCount ? source.Text.Length : source.StartOf(line);
}
