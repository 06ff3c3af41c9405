using System.Text.RegularExpressions;

namespace GuideGen.Guide.Inspection;

/// <summary>What looks as if it could lead to a person. Patterns only: they miss some, and the author has the last word.</summary>
static partial class PersonalData
{
    /// <summary>Short forms of the trade that stand where a plate has its district.</summary>
    static readonly HashSet<string> TradeWords = ["OBD", "CAN", "LIN", "ABS", "EGR", "DPF", "GPS", "LED", "USB", "PIN", "HP", "NOX", "SAE", "ISO", "DOT", "API"];

    static readonly HashSet<string> Calendar =
    [
        "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday", "January", "February", "March", "April", "May", "June",
        "July", "August", "September", "October", "November", "December", "Christmas", "Easter",
    ];

    static readonly (Regex Pattern, string Kind, Func<string, bool> Holds)[] Table =
    [
        (Mail(), "an e-mail address", _ => true),
        (Vin(), "a vehicle identification number", t => t.Count(char.IsAsciiDigit) >= 3 && t.Count(char.IsAsciiLetter) >= 2),
        (Abroad(), "a phone number", t => t.Count(char.IsAsciiDigit) is >= 8 and <= 15),
        (AtHome(), "a phone number", t => t.Count(char.IsAsciiDigit) is >= 9 and <= 12),
        (Called(), "a phone number", t => t.Count(char.IsAsciiDigit) >= 6),
        (NamedPlate(), "a number plate", t => t.Any(char.IsAsciiDigit) && t.Count(char.IsAsciiLetterUpper) >= 2),
        (Plate(), "a number plate", t => !TradeWords.Contains(t.Split('-', ' ')[0])),
        (Titled(), "a name", _ => true),
        (Related(), "a name", t => !Calendar.Contains(t[(t.LastIndexOf(' ') + 1)..])),
    ];

    // The page on which owners write a case has the same patterns in case-file.js, so nothing in them may depend on what an engine
    // takes for a digit or for the edge of a word.

    /// <returns>Where they stand in the text, from left to right; of two that overlap the first kind of the table.</returns>
    public static IEnumerable<(string Written, string Kind)> In(string text)
    {
        var found = new List<(int Start, int End, string Written, string Kind)>();
        foreach (var (pattern, kind, holds) in Table)
        {
            foreach (Match match in pattern.Matches(text))
            {
                var isFree = found.TrueForAll(f => match.Index >= f.End || match.Index + match.Length <= f.Start);
                if (isFree && holds(match.Value)) found.Add((match.Index, match.Index + match.Length, match.Value, kind));
            }
        }

        return found.OrderBy(f => f.Start).Select(f => (f.Written, f.Kind));
    }

    [GeneratedRegex(@"[A-Za-z0-9._%+-]{1,64}@[A-Za-z0-9-]{1,63}(\.[A-Za-z0-9-]{2,63}){1,4}", RegexOptions.CultureInvariant)]
    private static partial Regex Mail();

    // ISO 3779: seventeen characters, never I, O or Q.
    [GeneratedRegex("(?<![A-Za-z0-9-])[A-HJ-NPR-Za-hj-npr-z0-9]{17}(?![A-Za-z0-9-])", RegexOptions.CultureInvariant)]
    private static partial Regex Vin();

    [GeneratedRegex(@"(?<![A-Za-z0-9+])(\+|00)[1-9][0-9]{0,2}([ /().-]{0,2}[0-9]{1,12}){1,6}", RegexOptions.CultureInvariant)]
    private static partial Regex Abroad();

    // A leading nought and one or two gaps: part numbers with letters or more groups are left alone.
    [GeneratedRegex(@"(?<![A-Za-z0-9.,/-])0[1-9][0-9]{1,4}[ /-][0-9]{3,8}([ -][0-9]{2,6})?(?![A-Za-z0-9-])", RegexOptions.CultureInvariant)]
    private static partial Regex AtHome();

    [GeneratedRegex(@"(?<![\p{L}\p{N}_])(tel|telephone|phone|mobile|call|ring|text)( me| us)?( on| at| under)?[:. ]{1,3}\+?[0-9][0-9 /()-]{4,18}[0-9]", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Called();

    [GeneratedRegex(@"(?<![\p{L}\p{N}_])([Pp]late|[Rr]egistration)( number)?( is| was|:)? [A-Z0-9]{1,4}([ -]?[A-Z0-9]{1,4}){1,2}(?![\p{L}\p{N}_])", RegexOptions.CultureInvariant)]
    private static partial Regex NamedPlate();

    // The shapes AB12 CDE, AB-123-CD and X-YZ 1234; rarer ones only where the word plate stands before them.
    [GeneratedRegex("(?<![A-Za-z0-9-])([A-Z]{2}[0-9]{2} [A-Z]{3}|[A-Z]{2}-[0-9]{3}-[A-Z]{2}|[A-Z]{1,3}-[A-Z]{1,2}[ -]?[0-9]{2,4})(?![A-Za-z0-9-])", RegexOptions.CultureInvariant)]
    private static partial Regex Plate();

    [GeneratedRegex(@"(?<![\p{L}\p{N}_])(Mr|Mrs|Ms|Miss|Herr|Frau)\.? \p{Lu}\p{Ll}{1,30}", RegexOptions.CultureInvariant)]
    private static partial Regex Titled();

    [GeneratedRegex(@"(?<![\p{L}\p{N}_])([Mm]y|[Oo]ur) (mechanic|friend|neighbour|brother|sister|son|daughter|wife|husband|colleague|mate|boss|uncle|aunt|father|mother|cousin) \p{Lu}\p{Ll}{2,30}", RegexOptions.CultureInvariant)]
    private static partial Regex Related();
}
