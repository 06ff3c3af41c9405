namespace GuideGen.Codes.Tests.Reading;

/// <summary>Every way in which one kind of typing error can spoil a code; made without any of the code under test.</summary>
sealed record TypingError(string Name, bool IsPlainWrongDigit, Func<string, IEnumerable<string>> Spoil)
{
    static readonly (char Digit, char Letter)[] LookAlikes = [('0', 'O'), ('1', 'I'), ('1', 'L'), ('2', 'Z'), ('5', 'S'), ('6', 'G')];

    public static IReadOnlyList<TypingError> All { get; } =
    [
        new("letter for digit", false, c => LookAlikes.SelectMany(pair => Places(c, i => c[i] == pair.Digit, i => Replace(c, i, pair.Letter)))),
        new("dropped zero", false, c => Places(c, i => c[i] == '0', i => c.Remove(i, 1))),
        new("missing letter", false, c => [c[1..]]),
        new("neighbours swapped", false, c => Places(c, i => i > 0 && c[i] != c[i - 1], i => c[..(i - 1)] + c[i] + c[i - 1] + c[(i + 1)..])),
        new("doubled", false, c => Places(c, _ => true, i => c.Insert(i, c[i].ToString()))),
        new("inner space", false, c => Places(c, i => i > 0, i => c.Insert(i, " "))),
        new("inner dash", false, c => Places(c, i => i > 0, i => c.Insert(i, "-"))),
        new("suffix", false, c => new[] { "-00", ":1A", "13", "-00-AF" }.Select(s => c + s)),
        new("lower case", false, c => [c.ToLowerInvariant()]),
        new("strange letter", false, c => "FRTOVD0".Select(letter => letter + c[1..])),
        new("plain wrong digit", true, c => "0123456789ABCDEF".SelectMany(d => Places(c, i => i > 0 && c[i] != d && (i > 1 || d <= '3'), i => Replace(c, i, d)))),
    ];

    static IEnumerable<string> Places(string code, Func<int, bool> fits, Func<int, string> spoil) =>
        Enumerable.Range(0, code.Length).Where(fits).Select(spoil).Distinct();

    static string Replace(string code, int place, char c) => code[..place] + c + code[(place + 1)..];
}
