using System.Globalization;

namespace GuideGen.Benchmarks;

/// <summary>
/// Text with a vocabulary that grows with its length as natural language does: words fall off by Zipf's law and are
/// inflected. The same seed gives the same text.
/// </summary>
sealed class RandomText(int seed)
{
    const int Roots = 6_000;
    static readonly string[] Onsets = ["b", "br", "c", "cl", "d", "f", "g", "gr", "h", "j", "k", "l", "m", "n", "p", "pl", "r", "s", "sh", "st", "t", "tr", "v", "w"];
    static readonly string[] Vowels = ["a", "e", "i", "o", "u", "ea", "oo"];
    static readonly string[] Codas = ["", "", "n", "r", "l", "s", "t", "ck", "mp", "nd", "st"];
    static readonly string[] Endings = ["", "", "", "", "", "s", "s", "ed", "ing", "er", "ation", "ly"];
    static readonly string[] LittleWords = ["the", "a", "of", "and", "to", "in", "is", "with", "if", "it", "that", "on", "for", "when", "may"];

    string[]? _roots;
    double[]? _cumulative;

    /// <summary>The source of all chance, for what is no text.</summary>
    public Random Chance { get; } = new(seed);

    public string Sentences(int words)
    {
        var sentences = new List<string>();
        for (; words > 0; words -= 12) sentences.Add(Capital(Words(Math.Min(words, 12))) + ".");
        return string.Join(' ', sentences);
    }

    public string Words(int count) => string.Join(' ', Enumerable.Range(0, count).Select(_ => Word()));

    // About a third of English running text is words that carry no meaning of their own.
    string Word() => Chance.Next(3) == 0
        ? LittleWords[Chance.Next(LittleWords.Length)]
        : Root() + Endings[Chance.Next(Endings.Length)];

    string Root()
    {
        _roots ??= MakeRoots();
        _cumulative ??= Cumulative(Roots);
        var at = Array.BinarySearch(_cumulative, Chance.NextDouble() * _cumulative[^1]);
        return _roots[Math.Min(at < 0 ? ~at : at, Roots - 1)];
    }

    public string Code() => string.Create(CultureInfo.InvariantCulture, $"{"PPPPBCU"[Chance.Next(7)]}{Chance.Next(4)}{Chance.Next(0xFFF):X3}");

    string[] MakeRoots()
    {
        var roots = new HashSet<string>();
        while (roots.Count < Roots)
            roots.Add(string.Concat(Enumerable.Range(0, Syllables(roots.Count)).Select(_ => Syllable())));
        return [.. roots];
    }

    // Common words are short (Zipf's law of abbreviation).
    int Syllables(int rank) => rank < 300 ? 1 : rank < 2_000 ? 1 + Chance.Next(2) : 2 + Chance.Next(2);

    string Syllable() => Onsets[Chance.Next(Onsets.Length)] + Vowels[Chance.Next(Vowels.Length)] + Codas[Chance.Next(Codas.Length)];

    static double[] Cumulative(int count)
    {
        var sums = new double[count];
        var sum = 0.0;
        for (var rank = 0; rank < count; rank++) sums[rank] = sum += 1.0 / (rank + 2);
        return sums;
    }

    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
