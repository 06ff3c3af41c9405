using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Search;

namespace GuideGen.Benchmarks.Search;

/// <summary>
/// Pages of about 700 words with a vocabulary that grows with the text as natural language does: words fall off by Zipf's
/// law, are inflected, and every page adds a few of its own (part numbers, codes). The same seed gives the same pages.
/// </summary>
sealed class PageGenerator(int seed)
{
    const int Roots = 6_000;
    static readonly string[] Onsets = ["b", "br", "c", "cl", "d", "f", "g", "gr", "h", "j", "k", "l", "m", "n", "p", "pl", "r", "s", "sh", "st", "t", "tr", "v", "w"];
    static readonly string[] Vowels = ["a", "e", "i", "o", "u", "ea", "oo"];
    static readonly string[] Codas = ["", "", "n", "r", "l", "s", "t", "ck", "mp", "nd", "st"];
    static readonly string[] Endings = ["", "", "", "", "", "s", "s", "ed", "ing", "er", "ation", "ly"];
    static readonly string[] LittleWords = ["the", "a", "of", "and", "to", "in", "is", "with", "if", "it", "that", "on", "for", "when", "may"];

    readonly Random _random = new(seed);
    string[]? _roots;
    double[]? _cumulative;

    public ImmutableArray<SearchDocument> Pages(int count)
    {
        _roots ??= MakeRoots();
        _cumulative ??= Cumulative(Roots);
        return [.. Enumerable.Range(0, count).Select(Page)];
    }

    /// <summary>How large the page's Markdown source is at the least: its texts, no front matter or markup counted.</summary>
    public static int MarkdownBytes(SearchDocument page) =>
        page.Name.Length + string.Join(' ', page.Codes).Length + page.Summary.Length + page.Body.Length;

    SearchDocument Page(int number)
    {
        var name = Capital(Words(3 + _random.Next(4)));
        var codes = Enumerable.Range(0, _random.Next(4)).Select(_ => Code()).ToImmutableArray();
        var summary = Sentences(40);
        var body = Sentences(640 + _random.Next(40)) + $" Part {_random.Next(100_000, 999_999)} or {Code()}.";
        var address = string.Create(CultureInfo.InvariantCulture, $"faults/{string.Join('-', name.ToLowerInvariant().Split(' ').Take(3))}-{number}.html");
        return new(address, name, codes, summary, body);
    }

    string Sentences(int words)
    {
        var sentences = new List<string>();
        for (; words > 0; words -= 12) sentences.Add(Capital(Words(Math.Min(words, 12))) + ".");
        return string.Join(' ', sentences);
    }

    string Words(int count) => string.Join(' ', Enumerable.Range(0, count).Select(_ => Word()));

    // About a third of English running text is words that carry no meaning of their own.
    string Word() => _random.Next(3) == 0
        ? LittleWords[_random.Next(LittleWords.Length)]
        : Root() + Endings[_random.Next(Endings.Length)];

    string Root()
    {
        var at = Array.BinarySearch(_cumulative!, _random.NextDouble() * _cumulative![^1]);
        return _roots![Math.Min(at < 0 ? ~at : at, Roots - 1)];
    }

    string Code() => string.Create(CultureInfo.InvariantCulture, $"{"PPPPBCU"[_random.Next(7)]}{_random.Next(4)}{_random.Next(0xFFF):X3}");

    string[] MakeRoots()
    {
        var roots = new HashSet<string>();
        while (roots.Count < Roots)
            roots.Add(string.Concat(Enumerable.Range(0, Syllables(roots.Count)).Select(_ => Syllable())));
        return [.. roots];
    }

    // Common words are short (Zipf's law of abbreviation).
    int Syllables(int rank) => rank < 300 ? 1 : rank < 2_000 ? 1 + _random.Next(2) : 2 + _random.Next(2);

    string Syllable() => Onsets[_random.Next(Onsets.Length)] + Vowels[_random.Next(Vowels.Length)] + Codas[_random.Next(Codas.Length)];

    static double[] Cumulative(int count)
    {
        var sums = new double[count];
        var sum = 0.0;
        for (var rank = 0; rank < count; rank++) sums[rank] = sum += 1.0 / (rank + 2);
        return sums;
    }

    static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
