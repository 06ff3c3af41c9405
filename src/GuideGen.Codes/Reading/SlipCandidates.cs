namespace GuideGen.Codes.Reading;

/// <summary>Undoes one slip in every possible place. The texts are candidates only: most of them are no codes.</summary>
static class SlipCandidates
{
    /// <summary>The commonest first.</summary>
    internal const string Letters = "PUCB";

    const string Digits = "0123456789ABCDEF";

    /// <param name="typed">Letters and digits only, folded.</param>
    internal static IEnumerable<(Slip Slip, string Text)> Of(string typed) => typed.Length switch
    {
        4 => TooShort(typed),
        5 => RightLength(typed),
        6 => TooLong(typed),
        _ => [],
    };

    static IEnumerable<(Slip, string)> TooShort(string typed)
    {
        foreach (var letter in Letters)
            yield return (Slip.MissingLetter, letter + typed);
        for (var i = 1; i <= typed.Length; i++)
        {
            foreach (var digit in Digits)
                yield return (digit == '0' ? Slip.DroppedZero : Slip.DroppedCharacter, typed.Insert(i, digit.ToString()));
        }
    }

    static IEnumerable<(Slip, string)> RightLength(string typed)
    {
        yield return (Slip.None, typed);
        for (var i = 0; i + 1 < typed.Length; i++)
            yield return (Slip.Swapped, typed[..i] + typed[i + 1] + typed[i] + typed[(i + 2)..]);
        foreach (var letter in Letters)
            yield return (CodeShape.StartsLikeCode(typed[0]) ? Slip.WrongLetter : Slip.StrangeLetter, letter + typed[1..]);
        for (var i = 1; i < typed.Length; i++)
        {
            foreach (var digit in Digits)
                yield return (Slip.WrongDigit, typed[..i] + digit + typed[(i + 1)..]);
        }
    }

    static IEnumerable<(Slip, string)> TooLong(string typed)
    {
        for (var i = 0; i < typed.Length; i++)
        {
            var isDoubled = i > 0 && typed[i] == typed[i - 1];
            yield return (isDoubled ? Slip.Doubled : Slip.ExtraCharacter, typed.Remove(i, 1));
        }
    }
}
