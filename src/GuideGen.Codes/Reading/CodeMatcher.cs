namespace GuideGen.Codes.Reading;

/// <summary>Finds the codes of one line. Every run is looked at a fixed number of times, so a line costs linear time.</summary>
sealed class CodeMatcher(TextLine line, ReadingPlace place)
{
    readonly List<CodeMatch> matches = [];
    readonly CodeEdges edges = new(line, place);

    bool IsBox => place == ReadingPlace.LookUpBox;

    internal IReadOnlyList<CodeMatch> Matches => matches;

    internal void MatchLine()
    {
        matches.Clear();
        if (!IsBox && IsAboutSomethingElse())
            return;
        MatchRuns(guessing: false);
        if (matches.Count == 0 && (IsBox || line.Has(WordKind.Fault)))
            MatchRuns(guessing: true);
    }

    void MatchRuns(bool guessing)
    {
        for (var i = 0; i < line.Runs.Length; i++)
        {
            if ((guessing ? TryGuess(i) : TryMatch(i)) is not { } found)
                continue;
            matches.Add(found);
            i = found.LastRun;
        }
    }

    bool IsAboutSomethingElse()
    {
        if (line.Has(WordKind.Raises) || !line.Has(WordKind.Lowers | WordKind.LowersSoftly))
            return false;
        // "P0522 oil pressure" is a line of a report; "oil P0522" is not.
        var startsWithCode = line.Runs[0].Length >= TroubleCode.Length && line.Text[line.Runs[0].Start] == 'P';
        return line.Has(WordKind.Lowers) || !startsWithCode;
    }

    CodeMatch? TryMatch(int index)
    {
        var run = line.Runs[index];
        var first = line.Text[run.Start];
        return (first, run.Length) switch
        {
            ('0', 6 or 8) when line.Text[run.Start + 1] == 'X' => TryMatchRaw(index, run.Start + 2, run.Start),
            (_, 4 or 6) when line.At(run.Start - 1) == '$' => TryMatchRaw(index, run.Start, run.Start - 1),
            (_, 1) when CodeShape.StartsLikeCode(first) => TryMatchApart(index),
            (_, >= 5 and <= 7) when CodeShape.StartsLikeCode(first) => TryMatchWhole(index),
            _ => null,
        };
    }

    CodeMatch? TryMatchWhole(int index)
    {
        var run = line.Runs[index];
        var text = line.Span(run);
        if (!CodeShape.TryRead(text[..5], out var code, out var repaired) || !edges.LeftIsFree(index, matches))
            return null;
        var rest = text[5..];
        return edges.Finish(new(new(code), run.Start, run.End, index, index, repaired ? Certainty.Repaired : Certainty.Certain), rest);
    }

    // The letter, a gap, then the digits: "P 0299", "P-0299", "P - 0299".
    CodeMatch? TryMatchApart(int index)
    {
        var letter = line.Runs[index];
        if (index + 1 >= line.Runs.Length || !IsGap(letter.End, line.Runs[index + 1].Start))
            return null;
        var digits = line.Runs[index + 1];
        if (digits.Length is < 4 or > 6
            || !CodeShape.TryRead(line.Text[letter.Start], line.Span(digits)[..4], out var code, out var repaired)
            || !edges.LeftIsFree(index, matches) || !MayBeApart(index))
            return null;
        var certainty = repaired ? Certainty.Repaired : Certainty.Certain;
        return edges.Finish(new(new(code), letter.Start, digits.End, index, index + 1, certainty), line.Span(digits)[4..]);
    }

    bool IsGap(int from, int to) =>
        to - from is >= 1 and <= 3 && line.Text.AsSpan(from, to - from) is " " or "  " or "-" or " -" or "- " or " - ";

    // Without a word about faults, "plan B 2000" is no code; "P 0299" still is, and so is a code alone on its line.
    bool MayBeApart(int index) =>
        IsBox || line.Has(WordKind.Raises) || (line.Runs.Length == 2)
        || (line.Text[line.Runs[index + 1].Start] == '0' && (line.Text[line.Runs[index].Start] == 'P' || index == 0));

    // "$0299" and "0x0299" are the two bytes as sent, so the letter hides in the top bits; two more digits are the failure type.
    CodeMatch? TryMatchRaw(int index, int from, int start)
    {
        var run = line.Runs[index];
        var digits = line.Text.AsSpan(from, run.End - from);
        if (!CodeShape.IsHex(digits) || !MayBeRaw(digits))
            return null;
        var code = TroubleCode.FromBytes(CodeShape.HexByte(digits), CodeShape.HexByte(digits[2..]));
        byte? type = digits.Length == 6 ? CodeShape.HexByte(digits[4..]) : null;
        return edges.Finish(new(new(code, type), start, run.End, index, index, Certainty.Certain), []);
    }

    // A price is made of decimal digits and does not begin with a zero.
    bool MayBeRaw(ReadOnlySpan<char> digits) =>
        IsBox || line.Has(WordKind.Code) || (line.Has(WordKind.Fault) && (digits[0] == '0' || CodeShape.CountDigits(digits) < digits.Length));

    CodeMatch? TryGuess(int index)
    {
        var run = line.Runs[index];
        if (run.Length != 4 || !edges.LeftIsFree(index, matches))
            return null;
        var text = line.Span(run);
        var found = CodeShape.StartsLikeCode(text[0]) ? CodeShape.TryReadWithoutZero(text, out var code)
            : (IsBox || FollowsCodeWord(index)) & CodeShape.CountDigits(text) >= 3 & CodeShape.TryRead('P', text, out code, out _);
        return found ? edges.Finish(new(new(code), run.Start, run.End, index, index, Certainty.Guess), []) : null;
    }

    // "codes 0299 and 0401": the word itself stands before, or another number that followed it.
    bool FollowsCodeWord(int index)
    {
        var before = index - 1;
        if (before > 0 && line.Span(line.Runs[before]) is "AND" or "OR")
            before--;
        return before >= 0 && ((line.Runs[before].Word.Kind & WordKind.Code) != 0 || (matches.Count > 0 && matches[^1].LastRun == before));
    }
}
