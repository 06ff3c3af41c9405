using System.Runtime.InteropServices;
using GuideGen.Search.Words;

namespace GuideGen.Search.Lunr;

/// <summary>Numbers the terms in order of first appearance, and works out each distinct token only once.</summary>
sealed class Vocabulary
{
    const int StopWord = -1;
    readonly TokenTable _tokens = new();
    readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    readonly List<string> _terms = [], _forms = [];

    public IReadOnlyList<string> Terms => _terms;

    /// <summary>For each term the shortest word it stands for, of equally short ones the first in ordinal order.</summary>
    public IReadOnlyList<string> Forms => _forms;

    /// <summary>Term index of a lower-case token, or less than 0 for a stop word.</summary>
    public int IndexOf(ReadOnlySpan<char> token)
    {
        ref var term = ref _tokens.NumberOf(token, out var known);
        if (known) return term;
        var word = Tokens.Trim(token).ToString();
        return term = StopWords.All.Contains(word) ? StopWord : Number(PorterStemmer.Stem(word), word);
    }

    /// <summary>Takes in the terms of a later part of the text, and gives their numbers here.</summary>
    public int[] Add(IEnumerable<string> terms, IEnumerable<string> forms) => [.. terms.Zip(forms, Number)];

    int Number(string term, string form)
    {
        ref var number = ref CollectionsMarshal.GetValueRefOrAddDefault(_numbers, term, out var known);
        if (!known)
        {
            number = _terms.Count;
            _terms.Add(term);
            _forms.Add(form);
        }
        else if (IsBetter(form, _forms[number])) _forms[number] = form;
        return number;
    }

    static bool IsBetter(string form, string than) =>
        form.Length < than.Length || (form.Length == than.Length && string.CompareOrdinal(form, than) < 0);
}
