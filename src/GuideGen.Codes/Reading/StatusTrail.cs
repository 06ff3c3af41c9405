namespace GuideGen.Codes.Reading;

/// <summary>
/// Gives each code the status words and the control unit that stand by it: behind it ("P0299 (pending)"), before it
/// ("stored code P0299"), in a heading of the line ("Stored: P0299, P0101") or in a heading line of its own.
/// </summary>
sealed class StatusTrail(TextLine line, FindList finds, string text)
{
    // What a heading line said; it holds until the next one.
    StatusWords pageStatus;
    string? pageModule;

    // Since the line began.
    int lastFind;
    bool statusComesFirst;
    bool onlyFrame;
    StatusWords lineStatus;
    StatusWords anyStatus;
    string? lineModule;

    // Since the last code.
    Clause clause;
    StatusWords toPrevious;
    StatusWords either;
    StatusWords heading;
    string? module;
    bool hasCodeWord;

    internal void ReadLine(IReadOnlyList<CodeMatch> matches)
    {
        (lastFind, onlyFrame) = (-1, true);
        (lineStatus, anyStatus, lineModule) = (StatusWords.None, StatusWords.None, null);
        BeginGap();
        var position = line.Start;
        var next = 0;
        for (var i = 0; i < line.Runs.Length; i++)
        {
            var isCode = next < matches.Count && matches[next].FirstRun == i;
            Punctuate(position, isCode ? matches[next].Start : line.Runs[i].Start);
            if (isCode)
                TakeCode(matches[next]);
            else
                TakeWord(i);
            i = isCode ? matches[next++].LastRun : i;
            position = line.Runs[i].End;
        }
        Punctuate(position, line.End);
        EndLine();
    }

    void BeginGap()
    {
        clause = new() { FollowsCode = lastFind >= 0 };
        (toPrevious, either, heading, module, hasCodeWord) = (StatusWords.None, StatusWords.None, StatusWords.None, null, false);
    }

    void Punctuate(int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (line.Text[i] is ' ' or '\'' or '"')
                continue;
            toPrevious |= clause.ForPrevious;
            if (line.Text[i] == ':')
                heading |= clause.Alone | clause.ForNext;
            else
                either |= clause.Alone;
            clause = new();
        }
    }

    void TakeWord(int index)
    {
        var word = line.Runs[index].Word;
        var status = IsLampOn(index) ? StatusWords.LampOn : word.Status;
        clause.Add(status);
        anyStatus |= status;
        hasCodeWord |= (word.Kind & WordKind.Code) != 0;
        if ((word.Kind & WordKind.Module) != 0)
            module = text[line.Runs[index].Start..line.Runs[index].End];
        else if ((word.Kind & WordKind.Frame) == 0 && !IsCount(index))
        {
            clause.Break((word.Kind & WordKind.Negates) != 0);
            module = null;
            onlyFrame = false;
        }
    }

    void TakeCode(CodeMatch match)
    {
        lineModule = module ?? lineModule;
        var find = finds.Add(match.Reported, match.Start, match.End, match.Certainty, lineModule ?? pageModule);
        var own = clause.ForNext | heading;
        either |= clause.Alone;
        toPrevious |= clause.ForPrevious;
        if (lastFind < 0)
            (own, statusComesFirst) = (own | either, (own | either) != StatusWords.None);
        else if (statusComesFirst && heading == StatusWords.None && lineStatus == StatusWords.None)
            own |= either;
        else
            toPrevious |= either;
        GiveToPrevious();
        if (heading != StatusWords.None || (lastFind < 0 && hasCodeWord))
            lineStatus = own;
        finds.AddStatus(find, own | lineStatus | pageStatus);
        lastFind = find;
        BeginGap();
    }

    void GiveToPrevious()
    {
        if (lastFind >= 0)
            finds.AddStatus(lastFind, toPrevious);
    }

    void EndLine()
    {
        toPrevious |= clause.ForPrevious | clause.Alone | either;
        GiveToPrevious();
        if (lastFind >= 0 || !onlyFrame || (anyStatus == StatusWords.None && module is null))
            return;
        pageStatus = anyStatus;
        pageModule = module ?? pageModule;
    }

    bool IsLampOn(int index) =>
        line.Span(line.Runs[index]) is "ON" && index > 0 && line.Span(line.Runs[index - 1]) is "MIL" or "CEL" or "LAMP" or "LIGHT";

    bool IsCount(int index) =>
        line.Runs[index].Length <= 3 && CodeShape.CountDigits(line.Span(line.Runs[index])) == line.Runs[index].Length;
}
