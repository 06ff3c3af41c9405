namespace GuideGen.Codes.Reading;

/// <summary>The status words of one clause: those before its first foreign word and those since its last.</summary>
struct Clause
{
    // "Current" is also what flows in a wire, so it counts only in a clause without foreign words.
    const StatusWords Doubtful = StatusWords.Current;

    StatusWords lead;
    StatusWords tail;
    bool broken;
    bool negated;

    /// <summary>A code stands right before this clause.</summary>
    internal bool FollowsCode { get; init; }

    internal void Add(StatusWords status)
    {
        if (negated)
            return;
        lead |= broken ? StatusWords.None : status;
        tail |= status;
    }

    internal void Break(bool negates)
    {
        broken = true;
        negated |= negates;
        tail = StatusWords.None;
    }

    /// <summary>What belongs to the code before, because it stands right behind it in a longer clause.</summary>
    internal readonly StatusWords ForPrevious => broken && FollowsCode ? lead & ~Doubtful : StatusWords.None;

    /// <summary>What belongs to the code that follows at once, in a longer clause.</summary>
    internal readonly StatusWords ForNext => broken ? tail & ~Doubtful : StatusWords.None;

    /// <summary>All of it, where the clause holds nothing else.</summary>
    internal readonly StatusWords Alone => broken ? StatusWords.None : lead;
}
