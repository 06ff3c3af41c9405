using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pages;

/// <summary>A word of running text, in lower case; letters and digits only, so that hyphens part words as blanks do.</summary>
/// <param name="Block">Words of one block follow each other; a phrase does not run on into the next.</param>
public readonly record struct Word(string Text, int Start, int Length, int Block);

/// <summary>Cuts running text into words.</summary>
public static class Words
{
    public static List<Word> In(SourceText source, IEnumerable<TextRun> runs)
    {
        var words = new List<Word>();
        foreach (var run in runs)
        {
            var end = run.Start + run.Length;
            for (var i = run.Start; i < end; i++)
            {
                if (!char.IsLetterOrDigit(source.Text[i])) continue;
                var start = i;
                while (i < end && char.IsLetterOrDigit(source.Text[i])) i++;
                words.Add(new Word(source.Text[start..i].ToLowerInvariant(), start, i - start, run.Block));
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
