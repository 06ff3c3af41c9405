namespace GuideGen.Codes;

public enum ContradictionKind
{
    Subject,
    Level,
    Position,
    Mixture,
    Timing,
    Wiring,
    Side,
}

/// <summary>An author's text and the standard say opposite things of one code.</summary>
/// <param name="Author">What the author's text says, in one or two words.</param>
/// <param name="Standard">What the catalogue says instead.</param>
public readonly record struct Contradiction(ContradictionKind Kind, string Author, string Standard);
