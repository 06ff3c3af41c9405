using System.Collections.Immutable;

namespace GuideGen.Codes.Raw;

/// <summary>
/// The two bytes a code of services 03, 07 and 0A, with and without a count before them. Where the bus is not known
/// the number of bytes tells: a count makes it odd. Padding can spoil that, and then both readings are given.
/// </summary>
static class PairAnswers
{
    const int BytesOfThreePairs = 6;

    /// <param name="bytes">Behind the service byte.</param>
    internal static AnswerContent? Read(ReadOnlySpan<HexByte> bytes, Framing framing) => framing switch
    {
        Framing.Pairs => OfPairs(bytes, bytes.Length % 2 == 0),
        Framing.Can => ReadCounted(bytes),
        _ when bytes.Length % 2 == 0 => ReadEven(bytes),
        _ => ReadOdd(bytes),
    };

    static AnswerContent ReadCounted(ReadOnlySpan<HexByte> bytes)
    {
        var length = 2 * bytes[0].Value;
        var pairs = bytes[1..];
        return OfPairs(pairs[..Math.Min(length, pairs.Length)], length <= pairs.Length);
    }

    static AnswerContent? ReadOdd(ReadOnlySpan<HexByte> bytes)
    {
        if (FitsCount(bytes))
            return ReadCounted(bytes);
        // Three pairs with their checksum, but without the header.
        return bytes.Length == BytesOfThreePairs + 1 ? OfPairs(bytes[..BytesOfThreePairs], true) with { IsGuess = true } : null;
    }

    static AnswerContent ReadEven(ReadOnlySpan<HexByte> bytes)
    {
        var answer = OfPairs(bytes, true);
        var other = FitsCount(bytes) ? PairsOf(bytes[1..(1 + (2 * bytes[0].Value))]) : [];
        return IsPlausible(other, bytes[0].Value, answer.Codes)
            ? answer with { OtherReading = other, IsGuess = true }
            : answer;
    }

    static bool FitsCount(ReadOnlySpan<HexByte> bytes) =>
        2 * bytes[0].Value <= bytes.Length - 1 && Padding.IsOnly(bytes[(1 + (2 * bytes[0].Value))..]);

    // A count that would cover empty slots is no count. And a maker's code that ends in the first byte of the
    // empty slots ("01 33 00 00 00 00" as P3300) is too unlikely to raise a doubt.
    static bool IsPlausible(ImmutableArray<RawCode> other, int count, ImmutableArray<RawCode> pairs)
    {
        if (other.Length == 0 || other.Length != count || other.SequenceEqual(pairs))
            return false;
        var last = other[^1].Reported.Code;
        return last.Low != 0 || last.Owner == CodeOwner.IsoSae;
    }

    static AnswerContent OfPairs(ReadOnlySpan<HexByte> bytes, bool isComplete) =>
        new(PairsOf(bytes), isComplete);

    static ImmutableArray<RawCode> PairsOf(ReadOnlySpan<HexByte> bytes)
    {
        var codes = ImmutableArray.CreateBuilder<RawCode>(bytes.Length / 2);
        for (var i = 0; i + 2 <= bytes.Length; i += 2)
        {
            var code = TroubleCode.FromBytes(bytes[i].Value, bytes[i + 1].Value);
            if (!code.IsEmptySlot)
                codes.Add(new(new(code), bytes[i].Start, bytes[i + 1].Start + 2));
        }
        return codes.DrainToImmutable();
    }
}
