using System.Collections.Immutable;
using GuideGen.Codes.Raw;

namespace GuideGen.Codes.Reading;

public enum Certainty
{
    /// <summary>Written as a code; at most the case, the gaps or the alphabet differed.</summary>
    Certain,

    /// <summary>A slip was put right, such as a letter O for a zero; tell the reader what was read.</summary>
    Repaired,

    /// <summary>Something is missing or two readings are possible; the reader must accept it first.</summary>
    Guess,
}

/// <summary>What a report says about the state of a code, in words or by the service that was asked.</summary>
[Flags]
public enum StatusWords
{
    None = 0,
    Current = 1,
    Pending = 2,
    Confirmed = 4,
    Stored = 8,
    Permanent = 16,
    History = 32,
    Intermittent = 64,
    LampOn = 128,
}

/// <summary>One code that was read.</summary>
/// <param name="Start">Where it stood in the text, in UTF-16 units from 0.</param>
/// <param name="Length">Of the piece that was read as this code, its failure type and status included.</param>
/// <param name="Written">That piece, untouched.</param>
/// <param name="Module">The control unit named before the code, or the address that answered; null if none.</param>
public sealed record CodeFind(
    ReportedCode Reported, int Start, int Length, string Written, Certainty Certainty, StatusWords Status, string? Module)
{
    public TroubleCode Code => Reported.Code;
}

/// <param name="Finds">In the order of the text; the same code of the same control unit once only.</param>
/// <param name="Answers">The raw answers among the lines, refusals and empty ones included.</param>
public sealed record CodeReading(ImmutableArray<CodeFind> Finds, ImmutableArray<RawAnswer> Answers);
