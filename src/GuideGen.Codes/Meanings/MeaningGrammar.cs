using System.Text;

namespace GuideGen.Codes;

/// <summary>What a language must be able to say; all words stand in its tables, the order of words in the grammar.</summary>
public interface IMeaningWords
{
    /// <summary>The subject in this language, with as many "[]" as the English one has, in the order in which its sides come.</summary>
    string Subject(string english);

    /// <param name="follows">True behind the subject ("bank 1"), false inside it ("A").</param>
    string Side(Side side, bool follows);

    string Condition(ConditionInfo condition, bool inCircuit);
}

/// <summary>Words a meaning: the subject with its sides, the sides that follow, a colon, the condition.</summary>
public static class MeaningGrammar
{
    public static string Word(CodeEntry entry, IMeaningWords words)
    {
        var subject = Fill(entry, words, out var used);
        for (var i = used; i < entry.Sides.Length; i++)
            subject.Append(", ").Append(words.Side(entry.Sides[i], follows: true));
        subject.Append(": ").Append(words.Condition(entry.Condition, entry.InCircuit));
        subject[0] = char.ToUpperInvariant(subject[0]);
        return subject.ToString();
    }

    /// <summary>The subject with the sides that stand inside it, without those that follow.</summary>
    internal static StringBuilder Fill(CodeEntry entry, IMeaningWords words, out int used)
    {
        var pattern = words.Subject(entry.Subject);
        var filled = new StringBuilder(pattern.Length + 16);
        used = 0;
        var at = 0;
        for (int slot; (slot = pattern.IndexOf(SubjectLine.Slot, at, StringComparison.Ordinal)) >= 0; at = slot + SubjectLine.Slot.Length)
            filled.Append(pattern, at, slot - at).Append(words.Side(entry.Sides[used++], follows: false));
        return filled.Append(pattern, at, pattern.Length - at);
    }
}
