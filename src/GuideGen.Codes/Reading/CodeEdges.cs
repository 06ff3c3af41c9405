namespace GuideGen.Codes.Reading;

/// <summary>Decides where a code ends, what hangs on behind it, and whether its neighbours let it be one.</summary>
sealed class CodeEdges(TextLine line, ReadingPlace place)
{
    bool IsBox => place == ReadingPlace.LookUpBox;

    /// <summary>Part numbers, prices and addresses stick to what stands before them.</summary>
    internal bool LeftIsFree(int index, IReadOnlyList<CodeMatch> before)
    {
        var start = line.Runs[index].Start;
        var left = line.At(start - 1);
        if (IsBox || !"$#/.-=\\%".Contains(left, StringComparison.Ordinal))
            return true;
        return left switch
        {
            '/' or '-' when before.Count > 0 && before[^1].End == start - 1 => true,
            '-' => index == 0,
            '.' => line.At(start - 2) == '.' || (index == 1 && line.Runs[0].Length <= 2 && CodeShape.CountDigits(line.Span(line.Runs[0])) > 0),
            _ => false,
        };
    }

    /// <param name="glued">What follows the five characters without a gap: a failure type, the s of a plural, or nothing.</param>
    internal CodeMatch? Finish(CodeMatch match, ReadOnlySpan<char> glued)
    {
        if (glued.Length == 2 && CodeShape.IsHex(glued))
            match = match with { Reported = match.Reported with { FailureType = CodeShape.HexByte(glued) } };
        else if (glued is not ("" or "S"))
            return null;
        match = match.Reported.FailureType is null && glued.Length == 0 ? TakeFailureType(match) : match;
        match = match.Reported.FailureType is null ? match : TakeStatus(match);
        if (RightIsFree(match))
            return match;
        return IsBox && match.Certainty != Certainty.Guess ? match with { Certainty = Certainty.Repaired } : null;
    }

    CodeMatch TakeFailureType(CodeMatch match)
    {
        var run = TwoDigitsAt(match.End + 1, match.LastRun);
        if (run < 0 || !(line.At(match.End) is '-' or ':' || (line.At(match.End) == ' ' && BracketFollows(line.Runs[run].End))))
            return match;
        return match with
        {
            Reported = match.Reported with { FailureType = CodeShape.HexByte(line.Span(line.Runs[run])) },
            End = line.Runs[run].End,
            LastRun = run,
        };
    }

    CodeMatch TakeStatus(CodeMatch match)
    {
        var run = TwoDigitsAt(match.End + 1, match.LastRun);
        if (run < 0 || line.At(match.End) is not ('-' or ':'))
            return match;
        return match with
        {
            Reported = match.Reported with { Status = new StatusByte(CodeShape.HexByte(line.Span(line.Runs[run]))) },
            End = line.Runs[run].End,
            LastRun = run,
        };
    }

    int TwoDigitsAt(int position, int from)
    {
        var run = line.RunAt(position, from);
        return run >= 0 && line.Runs[run].Length == 2 && CodeShape.IsHex(line.Span(line.Runs[run])) ? run : -1;
    }

    bool BracketFollows(int position) =>
        line.At(position) is '[' or '(' || (line.At(position) == ' ' && line.At(position + 1) is '[' or '(');

    bool RightIsFree(CodeMatch match)
    {
        var run = line.RunAt(match.End + 1, match.LastRun);
        if (run < 0)
            return true;
        var next = line.Span(line.Runs[run]);
        return line.At(match.End) switch
        {
            '-' => IsWord(next) || IsCode(next),
            '/' => !char.IsAsciiDigit(next[0]) || (next.Length == 4 && CodeShape.IsHex(next)),
            '.' => !char.IsAsciiDigit(next[0]),
            _ => true,
        };
    }

    static bool IsWord(ReadOnlySpan<char> text) => text.Length >= 3 && !text.ContainsAnyInRange('0', '9');

    static bool IsCode(ReadOnlySpan<char> text) => text.Length is 5 or 7 && CodeShape.TryRead(text[..5], out _, out _);
}
