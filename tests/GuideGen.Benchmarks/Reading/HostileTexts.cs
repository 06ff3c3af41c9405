using System.Globalization;

namespace GuideGen.Benchmarks.Reading;

/// <summary>Texts of one size that a hostile or careless person could paste, each made to hurt another part of the reading.</summary>
static class HostileTexts
{
    public static IEnumerable<(string Name, string Text)> OfSize(int size)
    {
        var chance = new Random(7);
        foreach (var (name, piece) in Pieces) yield return (name, Repeat(piece, size));
        foreach (var (name, alphabet) in Alphabets) yield return (name, Draw(chance, alphabet, size));
        yield return ("different codes", Codes(size));
    }

    static IEnumerable<(string Name, string Piece)> Pieces =>
    [
        ("one run of codes", "P0299"),
        ("codes on one line", "P0299 "),
        ("codes on lines", "P0299\n"),
        ("a byte on one line", "43 "),
        ("answers on lines", "43 02 99\n"),
        ("undivided bytes", "43"),
        ("cut codes with slashes", "code P113/"),
        ("numbered frames", "0: 43\n"),
        ("length lines", "0A8\n"),
        ("gaps", "P - "),
        ("dashes", "P-"),
        ("raw marks", "$0299 code "),
        ("mail signs", "a@ "),
        ("address signs", "://"),
        ("blanks", " "),
        ("line ends", "\n"),
        ("status words", "stored, "),
        ("status and codes", "stored: P0299 "),
        ("first frames", "7E8 10 FF 43 01 02 03 04\n"),
        ("two frames", "7E8 10 FF 43 01\n7E8 21 02 03 04\n"),
        ("records", "02 99 00 AF "),
        ("open suffixes", "P0299-"),
    ];

    static IEnumerable<(string Name, string Alphabet)> Alphabets =>
    [
        ("random signs of codes", "PCBU0123 -:/\n"),
        ("random bytes", "0123456789ABCDEF   \n"),
        ("random text", string.Concat(Enumerable.Range(' ', 95).Select(i => (char)i)) + "\n"),
        ("random look-alikes", "РСВ—ё0123\u00a0P \n"),
    ];

    static string Repeat(string piece, int size) => string.Concat(Enumerable.Repeat(piece, (size / piece.Length) + 1))[..size];

    static string Draw(Random chance, string alphabet, int size) => string.Create(size, (chance, alphabet), (text, from) =>
    {
        foreach (ref var sign in text) sign = from.alphabet[from.chance.Next(from.alphabet.Length)];
    });

    static string Codes(int size) => string.Concat(Enumerable.Range(0, size / 9).Select(
        i => string.Create(CultureInfo.InvariantCulture, $"P{i & 0x3FFF:X4}-{(i >> 14) & 0xFF:X2} ")));
}
