namespace GuideGen.Search.Words;

/// <summary>
/// The suffix stripper of M. F. Porter, "An algorithm for suffix stripping", Program 14(3), 1980, with the two later
/// changes of its author (bli, logi) and with the border that lunr.js draws: a suffix is only seen when at least one
/// character stands before it, and words of one or two characters stay as they are.
/// </summary>
static class PorterStemmer
{
    readonly record struct Rule(string Suffix, string Replacement);

    // Longest suffix first, so that the first one that fits is the one the algorithm means.
    static readonly Rule[] DoubleSuffixes =
    [
        new("ational", "ate"), new("ization", "ize"), new("iveness", "ive"), new("fulness", "ful"), new("ousness", "ous"),
        new("tional", "tion"), new("biliti", "ble"), new("entli", "ent"), new("ousli", "ous"), new("ation", "ate"),
        new("alism", "al"), new("aliti", "al"), new("iviti", "ive"), new("enci", "ence"), new("anci", "ance"),
        new("izer", "ize"), new("alli", "al"), new("ator", "ate"), new("logi", "log"), new("bli", "ble"), new("eli", "e"),
    ];

    static readonly Rule[] IcAndFull =
    [
        new("icate", "ic"), new("ative", ""), new("alize", "al"), new("iciti", "ic"), new("ical", "ic"), new("ness", ""), new("ful", ""),
    ];

    static readonly Rule[] SingleSuffixes = Array.ConvertAll(
        (string[])["ement", "ance", "ence", "able", "ible", "ment", "ant", "ent", "ism", "ate", "iti", "ous", "ive", "ize", "al", "er", "ic", "ou"],
        suffix => new Rule(suffix, ""));

    public static string Stem(string word)
    {
        if (word.Length < 3) return word;
        // A leading y is a consonant; written large it is no vowel to any rule below.
        var leadingY = word[0] == 'y';
        var stem = leadingY ? "Y" + word[1..] : word;
        stem = Plural(stem);
        stem = PastAndGerund(stem);
        stem = FinalY(stem);
        stem = Replace(stem, DoubleSuffixes, leastMeasure: 1, out _);
        stem = Replace(stem, IcAndFull, leastMeasure: 1, out _);
        stem = LastSuffix(stem);
        stem = DoubleL(FinalE(stem));
        return leadingY ? "y" + stem[1..] : stem;
    }

    static string Plural(string word)
    {
        if (EndsAfterStem(word, "sses") || EndsAfterStem(word, "ies")) return word[..^2];
        return word.Length > 2 && word[^1] == 's' && word[^2] != 's' ? word[..^1] : word;
    }

    static string PastAndGerund(string word)
    {
        if (EndsAfterStem(word, "eed")) return Measure(word.AsSpan(..^3)) > 0 ? word[..^1] : word;
        var cut = EndsAfterStem(word, "ed") ? 2 : EndsAfterStem(word, "ing") ? 3 : 0;
        if (cut == 0 || !word.AsSpan(..^cut).ContainsAny(VowelsAndY)) return word;
        return Restore(word[..^cut]);
    }

    static string Restore(string stem)
    {
        if (Ends(stem, "at") || Ends(stem, "bl") || Ends(stem, "iz")) return stem + "e";
        if (stem.Length > 1 && stem[^1] == stem[^2] && !"aeiouylsz".Contains(stem[^1], StringComparison.Ordinal)) return stem[..^1];
        return IsShort(stem) ? stem + "e" : stem;
    }

    static string FinalY(string word) =>
        word.Length > 2 && word[^1] == 'y' && !IsVowel(word[^2]) ? word[..^1] + "i" : word;

    static string LastSuffix(string word)
    {
        var stem = Replace(word, SingleSuffixes, leastMeasure: 2, out var found);
        if (found) return stem;
        var isIon = EndsAfterStem(word, "sion") || EndsAfterStem(word, "tion");
        return isIon && Measure(word.AsSpan(..^3)) > 1 ? word[..^3] : word;
    }

    static string FinalE(string word)
    {
        if (!EndsAfterStem(word, "e")) return word;
        var stem = word[..^1];
        var measure = Measure(stem);
        return measure > 1 || (measure == 1 && !IsShort(stem)) ? stem : word;
    }

    static string DoubleL(string word) => Ends(word, "ll") && Measure(word) > 1 ? word[..^1] : word;

    /// <summary>Only the longest suffix that fits is tried; <paramref name="found"/> also when its stem was too short to lose it.</summary>
    static string Replace(string word, Rule[] rules, int leastMeasure, out bool found)
    {
        foreach (var rule in rules)
        {
            if (!EndsAfterStem(word, rule.Suffix)) continue;
            found = true;
            var stem = word[..^rule.Suffix.Length];
            return Measure(stem) >= leastMeasure ? stem + rule.Replacement : word;
        }
        found = false;
        return word;
    }

    /// <summary>Porter's m: how many times a run of vowels is followed by a run of consonants.</summary>
    static int Measure(ReadOnlySpan<char> stem)
    {
        var (measure, vowelBefore) = (0, false);
        for (var i = 0; i < stem.Length; i++)
        {
            var vowel = IsVowel(stem[i]) || (stem[i] == 'y' && i > 0 && !vowelBefore);
            if (vowelBefore && !vowel) measure++;
            vowelBefore = vowel;
        }
        return measure;
    }

    /// <summary>Porter's *o for a stem of one syllable: consonants, one vowel, one consonant that is not w, x or y.</summary>
    static bool IsShort(string stem) =>
        stem.Length > 2
        && !"aeiouwxy".Contains(stem[^1], StringComparison.Ordinal)
        && (IsVowel(stem[^2]) || stem[^2] == 'y')
        && !IsVowel(stem[0])
        && !stem.AsSpan(1..^2).ContainsAny(VowelsAndY);

    static readonly System.Buffers.SearchValues<char> VowelsAndY = System.Buffers.SearchValues.Create("aeiouy");

    static bool IsVowel(char c) => c is 'a' or 'e' or 'i' or 'o' or 'u';

    static bool Ends(string word, string suffix) => word.EndsWith(suffix, StringComparison.Ordinal);

    static bool EndsAfterStem(string word, string suffix) => word.Length > suffix.Length && Ends(word, suffix);
}
