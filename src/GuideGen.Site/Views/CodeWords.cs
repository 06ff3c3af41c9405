using GuideGen.Codes;

namespace GuideGen.Site.Views;

/// <summary>What a code means, in words.</summary>
static class CodeWords
{
    public static string MeaningOf(ViewContext view, TroubleCode code) =>
        view.Guide.Codes.Find(code.ToString())?.Meaning.Value
        ?? view.Words["code.no-meaning"];
}
