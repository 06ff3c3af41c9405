namespace GuideGen.Guide.Pages;

/// <summary>A word of running text; letters and digits only, so that hyphens part words as blanks do.</summary>
/// <param name="Source">What it stands in; seven million words of a large guide get no text of their own.</param>
/// <param name="Block">Words of one block follow each other; a phrase does not run on into the next.</param>
/// <param name="FollowsPause">True behind a comma, a full stop and the like: no phrase runs across it.</param>
public readonly record struct Word(string Source, int Start, int Length, int Block, bool FollowsPause)
{
    /// <summary>As it is written.</summary>
    public ReadOnlySpan<char> Span => Source.AsSpan(Start, Length);

    /// <summary>In lower case.</summary>
    public string Text => Source.Substring(Start, Length).ToLowerInvariant();
}

/// <summary>Cuts running text into words.</summary>
public static class Words
{
    /// <summary>Words of running text have so many characters with the blank behind them, or more.</summary>
    const int ShortWord = 5;

    /// <param name="text">A whole file.</param>
    /// <param name="runs">What of it is running text.</param>
    public static List<Word> In(string text, IReadOnlyCollection<TextRun> runs)
    {
        var words = new List<Word>(runs.Sum(r => r.Length) / ShortWord);
        var followsPause = false;
        foreach (var run in runs)
        {
            var (at, end) = (run.Start, run.Start + run.Length);
            while (Next(text, ref at, end, ref followsPause) is { Length: > 0 } word)
            {
                words.Add(new Word(text, at - word.Length, word.Length, run.Block, followsPause));
                followsPause = false;
            }
        }

        return words;
    }

    /// <summary>
    /// What something makes of each word, without a text for each of them: 10,000 pages have seven million.
    /// </summary>
    /// <param name="make">Given the word as it is written.</param>
    public static List<T> Map<T>(string text, IReadOnlyCollection<TextRun> runs, Func<ReadOnlySpan<char>, T> make)
    {
        var made = new List<T>(runs.Sum(r => r.Length) / ShortWord);
        var followsPause = false;
        foreach (var run in runs)
        {
            var (at, end) = (run.Start, run.Start + run.Length);
            while (Next(text, ref at, end, ref followsPause) is { Length: > 0 } word) made.Add(make(word));
        }

        return made;
    }

    /// <summary>The next word before the end; empty if there is none.</summary>
    /// <param name="at">Where to look from; behind the word afterwards.</param>
    /// <param name="followsPause">Becomes true on the way across a comma, a full stop and the like.</param>
    static ReadOnlySpan<char> Next(string text, ref int at, int end, ref bool followsPause)
    {
        for (; at < end && !char.IsLetterOrDigit(text[at]); at++) followsPause |= text[at] is '.' or ',' or ';' or ':' or '!' or '?' or '(' or ')';
        var start = at;
        while (at < end && char.IsLetterOrDigit(text[at])) at++;
        return text.AsSpan(start, at - start);
    }

    public static List<string> Of(string text) => Whole(text).ConvertAll(w => w.Text);

    /// <summary>The words of a text that is one run.</summary>
    public static List<Word> Whole(string text) => In(text, [new TextRun(0, text.Length, 0)]);
}
