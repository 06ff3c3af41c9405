using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pages;

/// <summary>A word of running text, in lower case; letters and digits only, so that hyphens part words as blanks do.</summary>
/// <param name="Block">Words of one block follow each other; a phrase does not run on into the next.</param>
/// <param name="FollowsPause">True behind a comma, a full stop and the like: no phrase runs across it.</param>
public readonly record struct Word(string Text, int Start, int Length, int Block, bool FollowsPause = false);

/// <summary>Cuts running text into words.</summary>
public static class Words
{
    const string Pauses = ".,;:!?()";

    public static List<Word> In(SourceText source, IEnumerable<TextRun> runs)
    {
        var words = new List<Word>();
        var followsPause = false;
        foreach (var run in runs)
        {
            var end = run.Start + run.Length;
            for (var i = run.Start; i < end; i++)
            {
                followsPause |= Pauses.Contains(source.Text[i], StringComparison.Ordinal);
                if (!char.IsLetterOrDigit(source.Text[i])) continue;
                var start = i;
                while (i + 1 < end && char.IsLetterOrDigit(source.Text[i + 1])) i++;
                words.Add(new Word(source.Text[start..(i + 1)].ToLowerInvariant(), start, i + 1 - start, run.Block, followsPause));
                followsPause = false;
            }
        }

        return words;
    }

    public static List<string> Of(string text)
    {
        var source = new SourceText("", text);
        return In(source, [new TextRun(0, text.Length, 0)]).ConvertAll(w => w.Text);
    }
}
