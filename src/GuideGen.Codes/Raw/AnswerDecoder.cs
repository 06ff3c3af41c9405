using System.Collections.Immutable;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Raw;

/// <summary>What the payload of an answer says, without its sender.</summary>
readonly record struct AnswerContent(ImmutableArray<RawCode> Codes, bool IsComplete)
{
    internal ImmutableArray<RawCode> OtherReading { get; init; } = [];

    internal bool IsGuess { get; init; }

    internal (byte Service, byte Reason)? Refusal { get; init; }
}

/// <summary>Reads the payload of one message: SAE J1979 services 03, 07 and 0A, ISO 14229-1 service 19 02, refusals.</summary>
static class AnswerDecoder
{
    const byte Refused = 0x7F;
    const byte ByStatus = 0x59;
    const byte ByStatusMask = 0x02;
    const byte PleaseWait = 0x78;

    internal static bool IsService(byte value) => ServiceOf(value) is not null;

    static AnswerService? ServiceOf(byte value) => value switch
    {
        0x43 => AnswerService.Stored,
        0x47 => AnswerService.Pending,
        0x4A => AnswerService.Permanent,
        ByStatus => AnswerService.ByStatus,
        Refused => AnswerService.Refused,
        _ => null,
    };

    /// <returns>Null if the payload is no answer that tells of codes.</returns>
    internal static RawAnswer? Decode(RawMessage message)
    {
        var bytes = message.Bytes;
        if (bytes.Length < 2 || ServiceOf(bytes[0].Value) is not { } service)
            return null;
        var content = service switch
        {
            AnswerService.Refused => ReadRefusal(bytes),
            AnswerService.ByStatus => ReadByStatus(bytes, message.Framing),
            _ => PairAnswers.Read(bytes[1..], message.Framing),
        };
        return content is not { } read ? null : new()
        {
            Service = service,
            Source = message.Source,
            Codes = read.Codes,
            OtherReading = read.OtherReading,
            IsComplete = read.IsComplete && message.IsWhole,
            Certainty = message.IsDoubtful || read.IsGuess ? Certainty.Guess : Certainty.Certain,
            Refusal = read.Refusal,
        };
    }

    static AnswerContent? ReadRefusal(ReadOnlySpan<HexByte> bytes) =>
        bytes.Length >= 3 && bytes[1].Value is 0x03 or 0x07 or 0x0A or 0x19 && bytes[2].Value != PleaseWait
            ? new([], IsComplete: true) { Refusal = (bytes[1].Value, bytes[2].Value) }
            : null;

    // Records of four bytes: high, middle, failure type, status. A bit outside the mask is not kept by this control unit.
    static AnswerContent? ReadByStatus(ReadOnlySpan<HexByte> bytes, Framing framing)
    {
        if (bytes.Length < 3 || bytes[1].Value != ByStatusMask)
            return null;
        var records = bytes[3..];
        var codes = ImmutableArray.CreateBuilder<RawCode>(records.Length / 4);
        for (var i = 0; i + 4 <= records.Length; i += 4)
        {
            var code = TroubleCode.FromBytes(records[i].Value, records[i + 1].Value);
            if (!code.IsEmptySlot)
                codes.Add(new(new(code, records[i + 2].Value, new(records[i + 3].Value, bytes[2].Value)), records[i].Start, records[i + 3].Start + 2));
        }
        var rest = records[(records.Length / 4 * 4)..];
        return new(codes.DrainToImmutable(), rest.IsEmpty || (framing == Framing.Unknown && Padding.IsOnly(rest)));
    }
}
