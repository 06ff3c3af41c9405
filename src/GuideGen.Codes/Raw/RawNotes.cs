using System.Collections.Frozen;
using System.Globalization;

namespace GuideGen.Codes.Raw;

/// <summary>What an owner should know about an answer besides its codes.</summary>
static class RawNotes
{
    // Negative response codes of ISO 14229-1, from memory, in our own words.
    static readonly FrozenDictionary<byte, string> Reasons = new Dictionary<byte, string>
    {
        [0x10] = "it gave no reason",
        [0x11] = "it does not know this question",
        [0x12] = "it does not know this form of the question",
        [0x13] = "the question had the wrong length",
        [0x21] = "it was busy: ask again",
        [0x22] = "conditions are not right, for example the engine is running",
        [0x31] = "it does not keep what was asked for",
        [0x33] = "it wants to be unlocked first",
        [0x7E] = "not in its present mode",
        [0x7F] = "not in its present mode",
    }.ToFrozenDictionary();

    internal static string? Of(RawAnswer answer) => answer switch
    {
        { Refusal: var (service, reason) } =>
            string.Create(CultureInfo.InvariantCulture, $"The control unit refused service {service:X2}: {ReasonFor(reason)}."),
        { OtherReading.Length: > 0 } => "These bytes fit both ways of sending codes. Paste the answer with its header to be sure.",
        { IsComplete: false } => "Part of this answer is missing, so codes may be missing too.",
        { Service: AnswerService.ByStatus, Codes.Length: > 0 } =>
            "Read as car control units send it. A truck may number its faults in another way, and this answer does not tell which.",
        _ => null,
    };

    static string ReasonFor(byte reason) =>
        Reasons.GetValueOrDefault(reason) ?? string.Create(CultureInfo.InvariantCulture, $"reason {reason:X2}");
}
