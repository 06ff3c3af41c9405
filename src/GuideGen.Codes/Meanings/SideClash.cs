using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace GuideGen.Codes;

/// <summary>The author names another bank, sensor, cylinder, letter or place than the standard.</summary>
static partial class SideClash
{
    public static Contradiction? Find(string text, CodeEntry entry) =>
        Numbered(text, entry, SideKind.Bank, Banks()) ?? Numbered(text, entry, SideKind.Sensor, Sensors())
        ?? Numbered(text, entry, SideKind.Cylinder, Cylinders()) ?? Lettered(text, entry) ?? Placed(text, entry);

    static Contradiction? Numbered(string text, CodeEntry entry, SideKind kind, Regex wording)
    {
        var stated = entry.Sides.Where(s => s.Kind == kind).Select(s => s.Value).ToImmutableArray();
        // "1 sensor 1/bank 2 sensor 1" names several: any of them will do, so nothing is said.
        if (stated is not [{ Length: <= 2 } own])
            return null;
        var named = wording.Matches(text).Select(m => m.Groups[1].Value).ToImmutableArray();
        return named.IsEmpty || named.Contains(own) ? null : Clash(EnglishWords.Instance.Side(new(kind, named[0]), true), new(kind, own));
    }

    // Only a letter right behind the very noun it stands behind in the standard: "sensor B", not "vitamin B".
    static Contradiction? Lettered(string text, CodeEntry entry)
    {
        var at = -1;
        for (var i = 0; i < entry.Sides.Length && (at = entry.Subject.IndexOf(SubjectLine.Slot, at + 1, StringComparison.Ordinal)) >= 0; i++)
        {
            var side = entry.Sides[i];
            if (side.Kind != SideKind.Letter || side.Value.Length != 1)
                continue;
            var nouns = NounsBefore(entry.Subject, at);
            if (nouns.Length == 0 || entry.Subject.Split(nouns[0] + " " + SubjectLine.Slot).Length != 2)
                continue;
            var named = LettersBehind(text, nouns);
            if (!named.IsEmpty && !named.Contains(side.Value))
                return Clash(nouns[0] + " " + named[0], new(SideKind.Letter, side.Value));
        }
        return null;
    }

    // The letter of "sensor or switch A" belongs to either word.
    static string[] NounsBefore(string subject, int slot)
    {
        var words = subject[..slot].TrimEnd().Split(' ');
        string[] nouns = words is [.., var first, "or", var second] ? [second, first] : [words[^1]];
        return [.. nouns.Where(n => n.Length >= 3 && char.IsAsciiLetter(n[0]))];
    }

    static ImmutableArray<string> LettersBehind(string text, string[] nouns)
    {
        var named = ImmutableArray.CreateBuilder<string>();
        foreach (Match mark in Letters().Matches(text))
        {
            if (nouns.Contains(mark.Groups["noun"].Value, StringComparer.OrdinalIgnoreCase))
                named.Add(mark.Groups["letter"].Value);
        }
        return named.DrainToImmutable();
    }

    static Contradiction? Placed(string text, CodeEntry entry)
    {
        var place = entry.Sides.FirstOrDefault(s => s.Kind == SideKind.Place);
        if (place is null)
            return null;
        return Apart(text, place, "left", "right", LeftHand(), RightHand()) ?? Apart(text, place, "front", "rear", FrontEnd(), RearEnd())
            ?? Apart(text, place, "driver", "passenger", Driver(), Passenger());
    }

    static Contradiction? Apart(string text, Side place, string one, string other, Regex saysOne, Regex saysOther)
    {
        bool isOne = place.Value.Contains(one, StringComparison.Ordinal), isOther = place.Value.Contains(other, StringComparison.Ordinal);
        if (isOne == isOther)
            return null;
        var wrong = isOne ? saysOther.IsMatch(text) && !saysOne.IsMatch(text) : saysOne.IsMatch(text) && !saysOther.IsMatch(text);
        return wrong ? Clash(isOne ? other : one, place) : null;
    }

    static Contradiction Clash(string author, Side own) => new(ContradictionKind.Side, author, EnglishWords.Instance.Side(own, follows: true));

    [GeneratedRegex(@"\bbank\s*#?(\d)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Banks();

    [GeneratedRegex(@"\bsensor\s*#?(\d)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Sensors();

    [GeneratedRegex(@"\bcylinder\s*(?:no\.?\s*|number\s+|#)?(\d{1,2})\b", RegexOptions.IgnoreCase)]
    private static partial Regex Cylinders();

    [GeneratedRegex(@"(?<noun>[A-Za-z]{3,})\s+[""“']?(?<letter>[A-Z])(?![\w/'’])")]
    private static partial Regex Letters();

    // "Right after a start" and "left open" are no places.
    const string NoAdverb = @"(?!\s+(?:away|after|before|now|at|when|if|for|to|in|on|over|open|behind|amount|value|part|one|time|grade|way)\b)";

    [GeneratedRegex(@"\bleft\b" + NoAdverb, RegexOptions.IgnoreCase)]
    private static partial Regex LeftHand();

    [GeneratedRegex(@"\bright\b" + NoAdverb, RegexOptions.IgnoreCase)]
    private static partial Regex RightHand();

    [GeneratedRegex(@"\bfront\b", RegexOptions.IgnoreCase)]
    private static partial Regex FrontEnd();

    [GeneratedRegex(@"\brear\b", RegexOptions.IgnoreCase)]
    private static partial Regex RearEnd();

    [GeneratedRegex(@"\bdriver(?:['’]?s)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Driver();

    [GeneratedRegex(@"\bpassenger(?:['’]?s)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Passenger();
}
