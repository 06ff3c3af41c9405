using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>The bits of a status byte, numbered as ISO 14229-1 numbers them.</summary>
public enum StatusBit
{
    TestFailed,
    TestFailedThisOperationCycle,
    Pending,
    Confirmed,
    TestNotCompletedSinceLastClear,
    TestFailedSinceLastClear,
    TestNotCompletedThisOperationCycle,
    WarningIndicatorRequested,
}

/// <summary>The status byte of ISO 14229-1 with the bits that the control unit says it keeps.</summary>
/// <param name="Available">The status availability mask of the answer; a bit outside it is unknown, not false.</param>
public readonly record struct StatusByte(byte Value, byte Available = 0xFF)
{
    static readonly (StatusBit Bit, string Words)[] BitWords =
    [
        (StatusBit.TestFailed, "failing at the last check"),
        (StatusBit.TestFailedThisOperationCycle, "failed at least once on this trip"),
        (StatusBit.Pending, "failed on this trip or the one before"),
        (StatusBit.Confirmed, "seen often enough to be stored"),
        (StatusBit.TestNotCompletedSinceLastClear, "not checked since the codes were cleared"),
        (StatusBit.TestFailedSinceLastClear, "failed at least once since the codes were cleared"),
        (StatusBit.TestNotCompletedThisOperationCycle, "not checked yet on this trip"),
        (StatusBit.WarningIndicatorRequested, "asks for a warning lamp"),
    ];

    // The first row whose bit is set gives the summary.
    static readonly (StatusBit Bit, string Words)[] Summaries =
    [
        (StatusBit.TestFailed, "present now"),
        (StatusBit.Confirmed, "stored, but not failing at the last check"),
        (StatusBit.Pending, "seen lately, not yet often enough to be stored"),
        (StatusBit.TestNotCompletedSinceLastClear, "not checked since the codes were cleared: this proves nothing either way"),
        (StatusBit.TestFailedSinceLastClear, "failed once since the codes were cleared, not lately"),
        (StatusBit.TestNotCompletedThisOperationCycle, "not checked yet on this trip"),
    ];

    /// <summary>Null where the control unit does not keep this bit.</summary>
    public bool? this[StatusBit bit] => IsIn(Available, bit) ? IsIn(Value, bit) : null;

    /// <summary>One line for an owner: what matters most in this byte.</summary>
    public string Summary => Summaries.Where(IsSet).Select(row => row.Words).FirstOrDefault("no fault now, none stored");

    /// <summary>Every known bit that is set, in words, lowest bit first.</summary>
    public ImmutableArray<string> Words => [.. BitWords.Where(IsSet).Select(row => row.Words)];

    bool IsSet((StatusBit Bit, string Words) row) => this[row.Bit] == true;

    static bool IsIn(byte value, StatusBit bit) => (value & (1 << (int)bit)) != 0;
}
