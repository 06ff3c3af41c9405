using GuideGen.Search.Words;

namespace GuideGen.Search.Lunr;

/// <summary>Numbers the terms in order of first appearance, and works out each distinct token only once.</summary>
sealed class Vocabulary
{
    const int StopWord = -1;
    readonly TokenTable _tokens = new();
    readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> _numbersBySpan;
    readonly List<string> _terms = [], _forms = [];

    public Vocabulary() => _numbersBySpan = _numbers.GetAlternateLookup<ReadOnlySpan<char>>();

    public IReadOnlyList<string> Terms => _terms;

    /// <summary>For each term the shortest word it stands for, of equally short ones the first in ordinal order.</summary>
    public IReadOnlyList<string> Forms => _forms;

    /// <summary>Term index of a lower-case token, or less than 0 for a stop word.</summary>
    public int IndexOf(ReadOnlySpan<char> token)
    {
        ref var term = ref _tokens.NumberOf(token, out var known);
        if (known) return term;
        var word = Tokens.Trim(token).ToString();
        return term = StopWords.All.Contains(word) ? StopWord : NumberOf(PorterStemmer.Stem(word), word);
    }

    /// <summary>Index of a term, which is taken in if it is a new one.</summary>
    /// <param name="form">A word it stands for.</param>
    public int NumberOf(ReadOnlySpan<char> term, ReadOnlySpan<char> form)
    {
        if (!_numbersBySpan.TryGetValue(term, out var number))
        {
            number = _terms.Count;
            _terms.Add(term.ToString());
            _forms.Add(form.SequenceEqual(term) ? _terms[number] : form.ToString());
            _numbers.Add(_terms[number], number);
        }
        else if (IsBetter(form, _forms[number])) _forms[number] = form.ToString();
        return number;
    }

    static bool IsBetter(ReadOnlySpan<char> form, string than) =>
        form.Length < than.Length || (form.Length == than.Length && form.SequenceCompareTo(than) < 0);
}
