using GuideGen.Search.Words;

namespace GuideGen.Search.Lunr;

/// <summary>
/// Some documents in a row, indexed on their own with their own term numbers. Because terms are numbered by first
/// appearance, numbering the chunks' terms again, chunk after chunk, gives what one pass over all documents gives.
/// </summary>
sealed class IndexChunk
{
    // A text has about so many characters for each of its different words: lists that double would throw away half of what they take.
    const int CharactersPerItem = 8;

    readonly List<int> _lengths = [], _starts = [0], _items, _counts;
    readonly List<int> _termsOfText = [];
    int[] _countOfTerm = new int[1024];

    public IndexChunk(IReadOnlyCollection<LunrDocument> documents)
    {
        var items = documents.Sum(d => d.Texts.Sum(t => t.Length)) / CharactersPerItem;
        (_items, _counts) = (new(items), new(items));
        var vocabulary = new Vocabulary();
        foreach (var text in documents.SelectMany(d => d.Texts)) Add(LowerCase.Of(text), vocabulary);
        // Not the vocabulary itself: what it looks tokens up in is larger than its terms, and the chunks are all there at once.
        (Terms, Forms) = (vocabulary.Terms, vocabulary.Forms);
    }

    public IReadOnlyList<string> Terms { get; }

    /// <inheritdoc cref="Vocabulary.Forms"/>
    public IReadOnlyList<string> Forms { get; }

    public IReadOnlyList<int> Lengths => _lengths;

    public int ItemCount => _items.Count;

    /// <summary>Writes this chunk's rows into the whole table, from <paramref name="row"/> and <paramref name="item"/> on.</summary>
    /// <param name="whole">Arrays of full size; each chunk writes only its own part.</param>
    /// <param name="row">The chunk's first field text.</param>
    /// <param name="item">Where that row's items begin.</param>
    /// <param name="numbers">The whole index's number of each of the chunk's terms.</param>
    public void CopyTo(Frequencies whole, int row, int item, int[] numbers)
    {
        for (var i = 0; i < _items.Count; i++)
        {
            whole.Items[item + i] = numbers[_items[i]];
            whole.Counts[item + i] = _counts[i];
        }
        for (var text = 0; text < _lengths.Count; text++) whole.Starts[row + text + 1] = item + _starts[text + 1];
    }

    void Add(ReadOnlySpan<char> text, Vocabulary vocabulary)
    {
        var length = 0;
        for (var token = Tokens.Next(ref text); token.Length > 0; token = Tokens.Next(ref text))
        {
            var term = vocabulary.IndexOf(token);
            if (term < 0) continue;
            length++;
            if (term >= _countOfTerm.Length) Array.Resize(ref _countOfTerm, term * 2);
            if (_countOfTerm[term]++ == 0) _termsOfText.Add(term);
        }
        _lengths.Add(length);
        EndText();
    }

    void EndText()
    {
        foreach (var term in _termsOfText)
        {
            _items.Add(term);
            _counts.Add(_countOfTerm[term]);
            _countOfTerm[term] = 0;
        }
        _termsOfText.Clear();
        _starts.Add(_items.Count);
    }
}
