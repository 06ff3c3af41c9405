namespace GuideGen.Codes;

/// <summary>
/// Looks for plain contradictions between what an author says of a code and what the standard means by it. It is made to stay
/// silent in doubt: other words, more detail or a cause instead of a condition are no contradictions.
/// </summary>
public static class MeaningComparer
{
    /// <returns>The first contradiction in the order subject, side, condition; null if there is none.</returns>
    public static Contradiction? Contradicts(string authorsText, CodeEntry entry)
    {
        // A maker's own code means what the maker says.
        if (entry.Code.Owner == CodeOwner.Maker)
            return null;
        return SubjectClash.Find(authorsText, entry) ?? SideClash.Find(authorsText, entry) ?? OfCondition(authorsText, entry);
    }

    static Contradiction? OfCondition(string text, CodeEntry entry)
    {
        var bare = WithoutSubject(text, entry);
        foreach (var (kind, inCircuit, one, other) in Opposites.Table)
        {
            if (inCircuit is not null && inCircuit != entry.InCircuit)
                continue;
            if (one.Holds(entry) && Says(bare, other, one))
                return new(kind, other.Name, entry.Condition.Words);
            if (other.Holds(entry) && Says(bare, one, other))
                return new(kind, one.Name, entry.Condition.Words);
        }
        return null;
    }

    static bool Says(string text, Opposites.Half wrong, Opposites.Half right) => wrong.Wording.IsMatch(text) && !right.Wording.IsMatch(text);

    // "Low pressure fuel system: pressure too high" speaks of high, so what names the subject is taken out first.
    static string WithoutSubject(string text, CodeEntry entry)
    {
        var subject = MeaningGrammar.Fill(entry, EnglishWords.Instance, out _).ToString();
        foreach (var naming in (string[])["low pressure", "high pressure", "high voltage", "low voltage", "low speed", "high speed", "high load",
            "high resolution", "gear high", "gear low", "open request", "on or start", "low switch"])
        {
            if (subject.Contains(naming, StringComparison.Ordinal))
                text = text.Replace(naming, "", StringComparison.OrdinalIgnoreCase).Replace(naming.Replace(' ', '-'), "", StringComparison.OrdinalIgnoreCase);
        }
        return entry.Sides.Where(s => s.Kind == SideKind.Circumstance).Aggregate(text, (t, s) => t.Replace(s.Value, "", StringComparison.OrdinalIgnoreCase));
    }
}
