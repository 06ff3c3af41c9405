using System.Collections.Immutable;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Raw;

/// <summary>Which question an answer belongs to (SAE J1979 services 03, 07 and 0A; ISO 14229-1 service 19 02).</summary>
public enum AnswerService
{
    Stored,
    Pending,
    Permanent,
    ByStatus,
    Refused,
}

/// <summary>A code within an answer, with the place of its bytes in the text.</summary>
public readonly record struct RawCode(ReportedCode Reported, int Start, int End);

/// <summary>One answer of one control unit.</summary>
public sealed record RawAnswer
{
    public required AnswerService Service { get; init; }

    /// <summary>Who answered: a CAN identifier or the address byte of an older bus, in hexadecimal; null if not pasted.</summary>
    public string? Source { get; init; }

    /// <summary>Empty slots are left out; no codes at all is an answer too.</summary>
    public ImmutableArray<RawCode> Codes { get; init; } = [];

    /// <summary>Where the bytes fit both framings: what they mean in the other one. Then nothing here is certain.</summary>
    public ImmutableArray<RawCode> OtherReading { get; init; } = [];

    public Certainty Certainty { get; init; }

    /// <summary>False if frames or bytes are missing, so codes may be missing too.</summary>
    public bool IsComplete { get; init; } = true;

    /// <summary>The service that was refused and the reason byte; null unless <see cref="Service"/> says refused.</summary>
    public (byte Service, byte Reason)? Refusal { get; init; }

    /// <summary>In words, for an owner: a refusal, a doubt or a gap. Null when there is nothing to say.</summary>
    public string? Note => RawNotes.Of(this);
}

static class AnswerServices
{
    internal static StatusWords Status(this AnswerService service) => service switch
    {
        AnswerService.Stored => StatusWords.Stored,
        AnswerService.Pending => StatusWords.Pending,
        AnswerService.Permanent => StatusWords.Permanent,
        _ => StatusWords.None,
    };
}
