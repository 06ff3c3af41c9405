using System.Runtime.InteropServices;

namespace GuideGen.Codes.Reading;

/// <summary>A stretch of letters and digits.</summary>
readonly record struct Run(int Start, int End, ReadingWord Word)
{
    internal int Length => End - Start;
}

/// <summary>One line cut into runs, and what its words say about it. Kept and filled again line by line.</summary>
sealed class TextLine(string folded)
{
    readonly List<Run> runs = [];

    internal string Text => folded;

    internal int Start { get; private set; }

    internal int End { get; private set; }

    internal ReadOnlySpan<Run> Runs => CollectionsMarshal.AsSpan(runs);

    internal WordKind Words { get; private set; }

    internal bool Has(WordKind kind) => (Words & kind) != 0;

    /// <summary>What stands at a position, or a line break outside the line.</summary>
    internal char At(int position) => position >= Start && position < End ? folded[position] : '\n';

    internal ReadOnlySpan<char> Span(Run run) => folded.AsSpan(run.Start, run.Length);

    /// <summary>The run that begins exactly at a position, looked for from a run on; -1 if none does.</summary>
    internal int RunAt(int position, int from)
    {
        while (from < runs.Count && runs[from].Start < position)
            from++;
        return from < runs.Count && runs[from].Start == position ? from : -1;
    }

    internal void Fill(int start, int end)
    {
        (Start, End, Words) = (start, end, WordKind.None);
        runs.Clear();
        for (var i = start; i < end;)
        {
            var tokenEnd = folded.AsSpan(i, end - i).IndexOf(' ') is var at and >= 0 ? i + at : end;
            if (!IsAddress(folded.AsSpan(i, tokenEnd - i)))
                CutToken(i, tokenEnd);
            i = tokenEnd + 1;
        }
        for (var i = 0; i < runs.Count; i++)
            Words |= Weigh(i);
    }

    static bool IsAddress(ReadOnlySpan<char> token) =>
        token.Length > 5 && (token.Contains("://", StringComparison.Ordinal) || token.Contains('@') ||
            token.StartsWith("WWW.", StringComparison.Ordinal));

    void CutToken(int start, int end)
    {
        for (var i = start; i < end; i++)
        {
            if (!IsRunCharacter(folded[i]))
                continue;
            var from = i;
            while (i < end && IsRunCharacter(folded[i]))
                i++;
            runs.Add(new(from, i, ReadingWords.Find(folded.AsSpan(from, i - from))));
        }
    }

    static bool IsRunCharacter(char c) => char.IsLetterOrDigit(c) || c == '_';

    // What a word says depends on its neighbours: a paint code is no trouble code, and part of the time no part number.
    WordKind Weigh(int index)
    {
        var kind = runs[index].Word.Kind;
        if ((kind & WordKind.Code) != 0 && index > 0 && (runs[index - 1].Word.Kind & WordKind.OtherCode) != 0)
            return WordKind.Lowers;
        if ((kind & WordKind.Part) != 0 && index + 1 < runs.Count && IsNumberLike(Span(runs[index + 1])))
            return WordKind.Lowers;
        var text = Span(runs[index]);
        if (text.Length > 2 && char.IsAsciiDigit(text[0]) && text.EndsWith("NM", StringComparison.Ordinal))
            return WordKind.Lowers;
        return text is "N" && index > 0 && At(runs[index].Start - 1) == '/' && Span(runs[index - 1]) is "P" ? WordKind.Lowers : kind;
    }

    static bool IsNumberLike(ReadOnlySpan<char> text) => text is "NO" or "NR" or "NUMBER" || text.ContainsAnyInRange('0', '9');
}
