using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Asks for the name that was most likely meant: by its spelling, by what the thing is called, or by a word of either.</summary>
static class NameQuestion
{
    /// <summary>A list that is no longer than this is shown in full.</summary>
    const int ShortList = 8;

    const int MostGuesses = 4;

    /// <summary>' Did you mean …?', ' Known: …' or nothing, ready to close a hint.</summary>
    public static string For(string written, IReadOnlyCollection<KnownName> known)
    {
        var meant = Meant(written, known);
        if (meant.Count is > 0 and <= MostGuesses) return $" Did you mean {string.Join(" or ", meant.Select(m => $"'{m}'"))}?";
        return known.Count is > 0 and <= ShortList ? $" Known: {string.Join(", ", known.Select(k => k.Name))}." : "";
    }

    static List<string> Meant(string written, IReadOnlyCollection<KnownName> known)
    {
        var words = WordsOf(written);
        if (known.FirstOrDefault(k => WordsOf(k.Title).SequenceEqual(words)) is { } called) return [called.Name];
        if (NearestName.To(written, known.Select(k => k.Name)) is { } near) return [near];
        if (words.All(w => w.Length < 3)) return [];
        return [.. known.Where(k => IsPart(words, [.. WordsOf(k.Name), .. WordsOf(k.Title)])).Select(k => k.Name)];
    }

    static bool IsPart(IEnumerable<string> words, IReadOnlyCollection<string> whole) =>
        words.All(w => whole.Any(x => x.StartsWith(w, StringComparison.Ordinal)));

    static List<string> WordsOf(string text) =>
        [.. string.Concat(text.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
}
