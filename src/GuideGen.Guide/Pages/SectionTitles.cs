using System.Collections.Frozen;

namespace GuideGen.Guide.Pages;

/// <summary>What the sections of pages are called in the language of the guide. English where a language has no row.</summary>
public static class SectionTitles
{
    static readonly FrozenDictionary<string, FrozenDictionary<string, string>> ByLanguage = new Dictionary<string, FrozenDictionary<string, string>>
    {
        ["de"] = new Dictionary<string, string>
        {
            ["Safety"] = "Sicherheit",
            ["What happens"] = "Was geschieht",
            ["Confirm it"] = "Sich vergewissern",
            ["Put it right"] = "Beheben",
            ["Prove it"] = "Nachweisen",
            ["Do it"] = "So geht es",
            ["What it tells you"] = "Was es verrät",
            ["What you notice"] = "Was du bemerkst",
            ["May I drive?"] = "Darf ich fahren?",
            ["Where it sits"] = "Wo es sitzt",
            ["What it does"] = "Was es tut",
            ["How it fails"] = "Wie es ausfällt",
        }.ToFrozenDictionary(),
    }.ToFrozenDictionary();

    /// <param name="language">Language tag (BCP 47) of the guide.</param>
    /// <param name="title">As the plan of sections has it, in English.</param>
    public static string In(string language, string title) =>
        ByLanguage.TryGetValue(language.Split('-')[0], out var titles) ? titles.GetValueOrDefault(title, title) : title;
}
