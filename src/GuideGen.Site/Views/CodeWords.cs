using GuideGen.Codes;

namespace GuideGen.Site.Views;

/// <summary>What a code means, in words: the guide's own meaning first, then the standard's.</summary>
static class CodeWords
{
    public static string MeaningOf(ViewContext view, TroubleCode code) =>
        view.Guide.Codes.Find(code.ToString())?.Meaning.Value
        ?? CodeCatalogue.FindStandard(code)?.Meaning
        ?? view.Words["code.no-meaning"];
}
