namespace GuideGen.Guide.Pages;

/// <summary>A phrase found in running text.</summary>
public readonly record struct FoundPhrase<T>(string Phrase, T Tag, int Start, int Length);

/// <summary>Finds many phrases in one pass over the words of a text; the last word may be in the plural.</summary>
/// <remarks>Kept by their first two words: of 2,000 parts many begin with the same one.</remarks>
public sealed class PhraseFinder<T>
{
    readonly Dictionary<string, Starts> byFirstWord = new(StringComparer.OrdinalIgnoreCase);

    public PhraseFinder(IEnumerable<(string Phrase, T Tag)> phrases)
    {
        foreach (var (phrase, tag) in phrases)
        {
            var words = Words.Of(phrase);
            if (words.Count == 0) continue;
            var wanted = new Wanted(phrase, [.. words], tag);
            foreach (var first in wanted.FormsOf(0))
            {
                if (!byFirstWord.TryGetValue(first, out var starts)) byFirstWord[first] = starts = new Starts();
                starts.Add(wanted);
            }
        }
    }

    public IEnumerable<FoundPhrase<T>> Find(List<Word> text)
    {
        var firstWords = byFirstWord.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var i = 0; i < text.Count; i++)
        {
            if (!firstWords.TryGetValue(text[i].Span, out var starts)) continue;
            foreach (var wanted in starts.Alone) yield return Found(text, i, wanted);
            if (i + 1 == text.Count || !starts.BySecondWord.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text[i + 1].Span, out var longer)) continue;
            foreach (var wanted in longer)
            {
                if (wanted.GoesOnAt(text, i)) yield return Found(text, i, wanted);
            }
        }
    }

    static FoundPhrase<T> Found(List<Word> text, int at, Wanted wanted)
    {
        var last = text[at + wanted.Words.Length - 1];
        return new FoundPhrase<T>(wanted.Phrase, wanted.Tag, text[at].Start, last.Start + last.Length - text[at].Start);
    }

    /// <summary>The phrases that begin with one word.</summary>
    sealed class Starts
    {
        public List<Wanted> Alone { get; } = [];

        public Dictionary<string, List<Wanted>> BySecondWord { get; } = new(StringComparer.OrdinalIgnoreCase);

        public void Add(Wanted wanted)
        {
            if (wanted.Words.Length == 1)
            {
                Alone.Add(wanted);
                return;
            }

            foreach (var second in wanted.FormsOf(1))
            {
                if (!BySecondWord.TryGetValue(second, out var list)) BySecondWord[second] = list = [];
                list.Add(wanted);
            }
        }
    }

    sealed record Wanted(string Phrase, string[] Words, T Tag)
    {
        readonly string[] lastForms = Words[^1] is var last && last.EndsWith('y') ? [last, last + "s", last[..^1] + "ies"] : [last, last + "s", last + "es"];

        /// <summary>What the word at a place of the phrase may be.</summary>
        public string[] FormsOf(int place) => place == Words.Length - 1 ? lastForms : [Words[place]];

        /// <param name="at">Where the first word of the phrase is; the second one is known to be behind it.</param>
        public bool GoesOnAt(List<Word> text, int at)
        {
            if (at + Words.Length > text.Count || text[at].Block != text[at + Words.Length - 1].Block || text[at + 1].FollowsPause) return false;
            for (var j = 2; j < Words.Length; j++)
            {
                var word = text[at + j];
                if (word.FollowsPause || !IsOneOf(FormsOf(j), word)) return false;
            }

            return true;
        }

        static bool IsOneOf(string[] forms, Word word)
        {
            foreach (var form in forms)
            {
                if (word.Span.Equals(form, StringComparison.OrdinalIgnoreCase)) return true;
            }

            return false;
        }
    }
}
