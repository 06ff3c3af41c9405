using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>What a guide says a standard code means does not contradict the standard in its subject, side or condition.</summary>
sealed class CodeMeaningInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) => guide.Codes.All.SelectMany(Inspect);

    static IEnumerable<Finding> Inspect(CodePage page)
    {
        if (CodeCatalogue.Find(page.Code) is not { } entry) yield break;
        if (MeaningComparer.Contradicts(page.Meaning.Value, entry) is not { } contradiction) yield break;
        var name = page.Code.ToString();
        yield return Rules.CodeMeaning.At(page.Meaning.Span, name, contradiction.Author, contradiction.Standard).Concerning(name);
    }
}
