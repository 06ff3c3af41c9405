using System.Collections.Frozen;
using System.Globalization;

namespace GuideGen.Codes;

/// <summary>How well a meaning is supported: by two or more strong sources, by two, or by one.</summary>
public enum Support
{
    Strong,
    Fair,
    Weak,
}

/// <param name="Meaning">In our own words, fit for the middle of a sentence.</param>
public sealed record FailureType(byte Value, string Meaning, Support Support)
{
    /// <summary>Some makers print lists of their own in the same place, so the meaning never comes without this reserve.</summary>
    public string Wording => "if the module follows the standard: " + Meaning;
}

/// <summary>The failure type byte behind a three-byte code (SAE J2012-DA).</summary>
public static class FailureTypes
{
    // By the high digit of the byte.
    static readonly string[] Categories =
    [
        "general", "electrical", "signal", "frequency or pulse width", "inside the module", "programming or configuration",
        "calculated check", "mechanical", "bus or message", "the part itself",
        "reserved", "reserved", "reserved", "reserved", "reserved", "the maker's own",
    ];

    static readonly FrozenDictionary<byte, FailureType> Table = new FailureType[]
    {
        new(0x00, "no further detail; the code text already says it all", Support.Strong),
        new(0x01, "some electrical fault, kind not narrowed down", Support.Strong),
        new(0x02, "something wrong with the signal, kind not narrowed down", Support.Strong),
        new(0x03, "fault in a frequency or pulse-width signal", Support.Strong),
        new(0x04, "fault inside the module itself", Support.Strong),
        new(0x05, "module programming fault", Support.Strong),
        new(0x06, "a calculated check failed", Support.Strong),
        new(0x07, "mechanical fault", Support.Strong),
        new(0x08, "fault in a bus signal or message", Support.Strong),
        new(0x09, "fault of the part itself", Support.Strong),
        new(0x11, "wire shorted to ground", Support.Strong),
        new(0x12, "wire shorted to supply", Support.Strong),
        new(0x13, "wire open", Support.Strong),
        new(0x14, "wire shorted to ground or open", Support.Strong),
        new(0x15, "wire shorted to supply or open", Support.Strong),
        new(0x16, "voltage under the limit", Support.Strong),
        new(0x17, "voltage over the limit", Support.Strong),
        new(0x18, "current under the limit", Support.Strong),
        new(0x19, "current over the limit", Support.Strong),
        new(0x1A, "resistance under the limit", Support.Strong),
        new(0x1B, "resistance over the limit", Support.Strong),
        new(0x1C, "voltage outside its range", Support.Strong),
        new(0x1D, "current outside its range", Support.Strong),
        new(0x1E, "resistance outside its range", Support.Strong),
        new(0x1F, "contact comes and goes", Support.Strong),
        new(0x21, "signal swing too small", Support.Strong),
        new(0x22, "signal swing too large", Support.Strong),
        new(0x23, "signal stuck low", Support.Strong),
        new(0x24, "signal stuck high", Support.Strong),
        new(0x25, "wrong signal shape", Support.Strong),
        new(0x26, "signal changes too slowly", Support.Strong),
        new(0x27, "signal changes too fast", Support.Strong),
        new(0x28, "signal offset wrong, or zero point not set", Support.Strong),
        new(0x29, "signal not valid", Support.Strong),
        new(0x2A, "signal stuck at a value within its range", Support.Fair),
        new(0x2B, "two signals influence each other", Support.Fair),
        new(0x2F, "signal jumps about", Support.Strong),
        new(0x31, "no signal at all", Support.Strong),
        new(0x32, "low phase too short", Support.Strong),
        new(0x33, "low phase too long", Support.Strong),
        new(0x34, "high phase too short", Support.Strong),
        new(0x35, "high phase too long", Support.Strong),
        new(0x36, "frequency too low", Support.Strong),
        new(0x37, "frequency too high", Support.Strong),
        new(0x38, "frequency wrong", Support.Strong),
        new(0x39, "too few pulses", Support.Strong),
        new(0x3A, "too many pulses", Support.Strong),
        new(0x41, "checksum wrong", Support.Strong),
        new(0x42, "memory fault, general", Support.Strong),
        new(0x43, "memory fault, special area", Support.Strong),
        new(0x44, "data memory fault", Support.Strong),
        new(0x45, "program memory fault", Support.Strong),
        new(0x46, "calibration or parameter memory fault", Support.Strong),
        new(0x47, "watchdog or safety processor fault", Support.Strong),
        new(0x48, "monitoring software fault", Support.Strong),
        new(0x49, "electronics inside failed", Support.Strong),
        new(0x4A, "wrong part fitted", Support.Fair),
        new(0x4B, "too hot", Support.Strong),
        new(0x51, "not programmed", Support.Strong),
        new(0x52, "not activated", Support.Strong),
        new(0x53, "switched off by configuration", Support.Weak),
        new(0x54, "calibration missing", Support.Strong),
        new(0x55, "not configured", Support.Strong),
        new(0x56, "configuration not valid or does not fit", Support.Strong),
        new(0x61, "calculated value wrong", Support.Strong),
        new(0x62, "two signals do not agree", Support.Strong),
        new(0x63, "protection timer ran out", Support.Strong),
        new(0x64, "value not believable", Support.Strong),
        new(0x65, "too few changes or events", Support.Strong),
        new(0x66, "too many changes or events", Support.Strong),
        new(0x67, "wrong signal after an event", Support.Strong),
        new(0x68, "information about an event, not a fault", Support.Strong),
        new(0x71, "actuator stuck", Support.Strong),
        new(0x72, "actuator stuck open", Support.Strong),
        new(0x73, "actuator stuck closed", Support.Strong),
        new(0x74, "actuator slipping", Support.Strong),
        new(0x75, "emergency position not reached", Support.Fair),
        new(0x76, "fitted in the wrong position", Support.Fair),
        new(0x77, "commanded position not reached", Support.Fair),
        new(0x78, "out of alignment or adjustment", Support.Fair),
        new(0x79, "linkage fault", Support.Fair),
        new(0x7A, "fluid leak or bad seal", Support.Fair),
        new(0x7B, "fluid level low", Support.Fair),
        new(0x7C, "reacts too slowly", Support.Weak),
        new(0x7F, "actuator stuck off", Support.Fair),
        new(0x81, "bad serial data received", Support.Strong),
        new(0x82, "message counter wrong or not moving", Support.Strong),
        new(0x83, "message protection value (checksum/CRC) wrong", Support.Strong),
        new(0x84, "message value under its range", Support.Strong),
        new(0x85, "message value over its range", Support.Strong),
        new(0x86, "message signal not valid", Support.Strong),
        new(0x87, "message missing", Support.Strong),
        new(0x88, "bus off", Support.Strong),
        new(0x8F, "bus signal erratic", Support.Weak),
        new(0x91, "parametric fault", Support.Strong),
        new(0x92, "works badly or wrongly", Support.Strong),
        new(0x93, "does not work", Support.Fair),
        new(0x94, "works when it should not", Support.Strong),
        new(0x95, "assembled wrongly", Support.Strong),
        new(0x96, "part failed inside", Support.Strong),
        new(0x97, "movement or flow blocked", Support.Strong),
        new(0x98, "part or system too hot", Support.Strong),
        new(0x99, "learned value at its limit", Support.Strong),
        new(0x9A, "operating conditions not right", Support.Fair),
        new(0x9E, "stuck on", Support.Fair),
        new(0x9F, "stuck off", Support.Weak),
    }.ToFrozenDictionary(type => type.Value);

    public static IEnumerable<FailureType> All => Table.Values.OrderBy(type => type.Value);

    /// <summary>Null for a byte without a published meaning.</summary>
    public static FailureType? Find(byte value) => Table.GetValueOrDefault(value);

    /// <summary>The kind of fault that the byte's high digit stands for.</summary>
    public static string CategoryOf(byte value) => Categories[value >> 4];

    /// <summary>Always some words, with their reserve; a byte without a published meaning is told by its category.</summary>
    public static string Describe(byte value) => Find(value)?.Wording
        ?? string.Create(CultureInfo.InvariantCulture, $"{value:X2} has no published meaning (category: {CategoryOf(value)})");
}
