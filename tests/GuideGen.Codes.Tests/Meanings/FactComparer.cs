using System.Text.RegularExpressions;

namespace GuideGen.Codes.Tests.Meanings;

/// <summary>
/// Compares an entry with the text of the open list without using anything of the catalogue's own making: the text must show
/// the entry's condition by the witness below; take it out, and what is left must be the entry's subject and sides, word by
/// word, with nothing over on either side.
/// </summary>
static partial class FactComparer
{
    /// <returns>What does not fit, empty if all does.</returns>
    public static string Difference(string fact, CodeEntry entry)
    {
        var text = Plain(fact);
        if (!ConditionWitness.ByKey.TryGetValue(entry.Condition.Key, out var witness))
            return "no witness for " + entry.Condition.Key;
        var rest = text;
        if (witness.Length > 0)
        {
            var seen = Regex.Matches(text, witness, RegexOptions.IgnoreCase);
            if (seen.Count == 0)
                return "condition " + entry.Condition.Key;
            var at = seen.MaxBy(m => (m.Length, m.Index))!;
            rest = text.Remove(at.Index, at.Length).Insert(at.Index, $" {ConditionWitness.Leaves.GetValueOrDefault(entry.Condition.Key)} ");
        }
        var ours = Words(string.Join(' ',
            entry.Subject.Replace("[]", " ", StringComparison.Ordinal), string.Join(' ', entry.Sides.Select(Spell)), entry.InCircuit ? "circuit" : ""));
        var theirs = Words(rest);
        var over = theirs.Except(ours).Select(w => "+" + w).Concat(ours.Except(theirs).Select(w => "-" + w)).ToList();
        return over.Count > 0 ? string.Join(' ', over) : Marks(rest, entry);
    }

    // Bank 1 and sensor 2 must not pass for bank 2 and sensor 1, nor A B for B A.
    static string Marks(string rest, CodeEntry entry)
    {
        foreach (var kind in (SideKind[])[SideKind.Bank, SideKind.Sensor, SideKind.Cylinder])
        {
            foreach (var side in entry.Sides.Where(s => s.Kind == kind))
            {
                if (!Regex.IsMatch(rest, $@"\b{kind}s? {Regex.Escape(side.Value)}(?!\d)", RegexOptions.IgnoreCase))
                    return $"{kind} {side.Value}";
            }
        }
        var letters = string.Concat(entry.Sides.Where(s => char.IsAsciiLetterUpper(s.Value[0])).Select(s => s.Value));
        var theirs = string.Concat(LoneLetters().Matches(NotLetters().Replace(rest, " ")).Select(m => m.Value));
        return letters == theirs ? "" : $"letters {letters} for {theirs}";
    }

    static string Spell(Side side) => side.Kind <= SideKind.Catalyst ? $"{side.Kind} {side.Value}" : side.Value;

    static string Plain(string fact)
    {
        var text = fact.Replace('“', '"').Replace('”', '"').Replace('–', '-');
        text = Quoted().Replace(text, "$1").Replace("\"", "", StringComparison.Ordinal);
        foreach (var (wrong, right) in Slips)
            text = text.Replace(wrong, right, StringComparison.Ordinal);
        return Blanks().Replace(text, " ").Trim();
    }

    static HashSet<string> Words(string text)
    {
        foreach (var (pattern, words) in Vocabulary.Phrases)
            text = pattern.Replace(text, words);
        var found = WordParts().Matches(text).Select(m => m.Value.ToLowerInvariant());
        return [.. found.Select(w => Vocabulary.Spelling.GetValueOrDefault(w, w)).Where(w => !Vocabulary.Small.Contains(w))];
    }

    // Typing slips of the list.
    static readonly (string Wrong, string Right)[] Slips =
    [
        ("Perfomance", "Performance"), ("Performace", "Performance"), ("CircuitRange", "Circuit Range"), ("BCircuit", "B Circuit"),
        ("Intermitttent", "Intermittent"), ("InternalTemperature", "Internal Temperature"), ("Insufficent", "Insufficient"),
        ("Acutator", "Actuator"), ("MasterModule", "Master Module"), ("Exceedence", "Exceedance"), ("Bank1/Bank2", "Banks 1 and 2"), (":", ""),
    ];

    [GeneratedRegex("\"([A-Z]):?\"")]
    private static partial Regex Quoted();

    [GeneratedRegex("A/[CVD](?= )|[LF] Terminal|Lamp/L|Field/F")]
    private static partial Regex NotLetters();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex("[A-Za-z]+|[0-9]+")]
    private static partial Regex WordParts();

    [GeneratedRegex(@"(?<![\w/(-])(?:[A-Z](?:/[A-Z])?)(?![\w/)-])")]
    private static partial Regex LoneLetters();
}
