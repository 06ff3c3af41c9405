using System.Text.RegularExpressions;

namespace GuideGen.Codes;

/// <summary>
/// The author's first clause names known components and none of them has anything to do with the standard's subject. Later
/// clauses are left alone: there authors name causes.
/// </summary>
static partial class SubjectClash
{
    public static Contradiction? Find(string text, CodeEntry entry)
    {
        var clause = FirstClause().Match(text).Value;
        var standard = Named(entry.Subject);
        var author = Named(clause);
        if (standard.Count == 0 || author.Count == 0 || standard.Any(s => author.Any(a => a.Circle == s.Circle || s.Kin.Contains(a.Circle) || a.Kin.Contains(s.Circle))))
            return null;
        return new(ContradictionKind.Subject, author[0].Circle, MeaningGrammar.Fill(entry, EnglishWords.Instance, out _).ToString());
    }

    static List<ComponentNames.Component> Named(string text) => [.. ComponentNames.Table.Where(c => c.Wording.IsMatch(text))];

    [GeneratedRegex(@"^[^.:;]*?(?=[.:;]|,|\b(?:because|often|usually|mostly|caused|due|after|when|while|from|by)\b|$)", RegexOptions.IgnoreCase)]
    private static partial Regex FirstClause();
}
