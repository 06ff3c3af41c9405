using System.Collections.Immutable;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Raw;

/// <summary>Reads what a control unit or an adapter sent, byte by byte as it was pasted.</summary>
public static class RawAnswers
{
    /// <summary>
    /// The answers among the lines, in order; lines that hold anything else than bytes are passed over. The codes are
    /// those of <see cref="CodeReader"/>, here with their service, sender and gaps.
    /// </summary>
    public static ImmutableArray<RawAnswer> Read(string text) => CodeReader.Read(text, ReadingPlace.FreeText).Answers;

    internal static IEnumerable<RawAnswer> Read(HexBlock block) =>
        FrameAssembler.Assemble(block).Select(AnswerDecoder.Decode).OfType<RawAnswer>();
}
