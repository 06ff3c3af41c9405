namespace GuideGen.Guide.Pages;

/// <summary>A phrase found in running text.</summary>
public readonly record struct FoundPhrase<T>(string Phrase, T Tag, int Start, int Length);

/// <summary>Finds many phrases in one pass over the words of a text; the last word may be in the plural.</summary>
public sealed class PhraseFinder<T>
{
    readonly Dictionary<string, List<(string Phrase, List<string> Words, T Tag)>> byFirstWord = new(StringComparer.Ordinal);

    public PhraseFinder(IEnumerable<(string Phrase, T Tag)> phrases)
    {
        foreach (var (phrase, tag) in phrases)
        {
            var words = Words.Of(phrase);
            if (words.Count == 0) continue;
            foreach (var first in words.Count == 1 ? Forms(words[0]) : [words[0]])
            {
                if (!byFirstWord.TryGetValue(first, out var list)) byFirstWord[first] = list = [];
                list.Add((phrase, words, tag));
            }
        }
    }

    public IEnumerable<FoundPhrase<T>> Find(IReadOnlyList<Word> text)
    {
        for (var i = 0; i < text.Count; i++)
        {
            if (!byFirstWord.TryGetValue(text[i].Text, out var candidates)) continue;
            foreach (var (phrase, words, tag) in candidates)
            {
                if (!StandsAt(text, i, words)) continue;
                var last = text[i + words.Count - 1];
                yield return new FoundPhrase<T>(phrase, tag, text[i].Start, last.Start + last.Length - text[i].Start);
            }
        }
    }

    static bool StandsAt(IReadOnlyList<Word> text, int at, List<string> words)
    {
        if (at + words.Count > text.Count || text[at].Block != text[at + words.Count - 1].Block) return false;
        for (var j = 1; j < words.Count; j++)
        {
            var word = text[at + j];
            var isSame = j == words.Count - 1 ? Forms(words[j]).Contains(word.Text) : word.Text == words[j];
            if (!isSame || word.FollowsPause) return false;
        }

        return true;
    }

    static string[] Forms(string word) => word.EndsWith('y') ? [word, word + "s", word[..^1] + "ies"] : [word, word + "s", word + "es"];
}
