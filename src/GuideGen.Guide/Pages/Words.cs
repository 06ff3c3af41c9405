namespace GuideGen.Guide.Pages;

/// <summary>A word of running text, in lower case; letters and digits only, so that hyphens part words as blanks do.</summary>
/// <param name="Block">Words of one block follow each other; a phrase does not run on into the next.</param>
/// <param name="FollowsPause">True behind a comma, a full stop and the like: no phrase runs across it.</param>
public readonly record struct Word(string Text, int Start, int Length, int Block, bool FollowsPause = false);

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
            var end = run.Start + run.Length;
            for (var i = run.Start; i < end; i++)
            {
                if (!char.IsLetterOrDigit(text[i]))
                {
                    followsPause |= text[i] is '.' or ',' or ';' or ':' or '!' or '?' or '(' or ')';
                    continue;
                }

                var start = i;
                while (i + 1 < end && char.IsLetterOrDigit(text[i + 1])) i++;
                words.Add(new Word(text[start..(i + 1)].ToLowerInvariant(), start, i + 1 - start, run.Block, followsPause));
                followsPause = false;
            }
        }

        return words;
    }

    public static List<string> Of(string text) => Whole(text).ConvertAll(w => w.Text);

    /// <summary>The words of a text that is one run.</summary>
    public static List<Word> Whole(string text) => In(text, [new TextRun(0, text.Length, 0)]);
}
