namespace GuideGen.Codes.Reading;

/// <summary>What went wrong between the meant code and the typed one.</summary>
public enum Slip
{
    /// <summary>Nothing: at most gaps, dashes, lower case or a failure type behind it.</summary>
    None,

    /// <summary>A letter that looks like a digit, such as O for 0.</summary>
    LookAlike,

    /// <summary>A character typed twice.</summary>
    Doubled,

    DroppedZero,

    /// <summary>The first letter left out.</summary>
    MissingLetter,

    /// <summary>Two neighbours in the wrong order.</summary>
    Swapped,

    /// <summary>A first letter that begins no code.</summary>
    StrangeLetter,

    /// <summary>One of the four letters for another.</summary>
    WrongLetter,

    ExtraCharacter,
    DroppedCharacter,
    WrongDigit,
}

/// <summary>What is known of a code where suggestions are asked for.</summary>
/// <param name="IsAssigned">The standard gives it a meaning.</param>
/// <param name="IsCovered">The guide mentions it.</param>
/// <param name="Cases">How many solved cases of the guide had it.</param>
public readonly record struct CodeStanding(bool IsAssigned, bool IsCovered, int Cases)
{
    public bool IsKnown => IsAssigned || IsCovered;
}

public sealed record CodeSuggestion(TroubleCode Code, Slip Slip, CodeStanding Standing);
