using System.Globalization;

namespace GuideGen.Codes.Raw;

/// <summary>
/// Puts messages together from the lines of a block: ISO 15765-2 frames, one reassembly per header because several
/// control units answer in turns; numbered frames of an adapter; messages of the older buses; bare payloads.
/// </summary>
sealed class FrameAssembler
{
    const string NoHeader = "";

    readonly List<RawMessage> messages = [];
    readonly Dictionary<string, RawMessage> open = [];
    readonly NumberedFrames numbered;

    FrameAssembler() => numbered = new(messages);

    internal static List<RawMessage> Assemble(HexBlock block)
    {
        var assembler = new FrameAssembler();
        var bytes = block.CopyBytes();
        foreach (var line in block.Lines)
            assembler.Take(line, bytes.Slice(line.From, line.Count));
        return assembler.messages;
    }

    void Take(HexLine line, ReadOnlyMemory<HexByte> bytes)
    {
        if (line.Announced >= 0)
            numbered.Announce(line.Announced);
        else if (line.Index >= 0)
            numbered.Take(line.Index, bytes);
        else if (IsAnswer(line.Header))
            TakeFrame(line.Header, bytes);
        else if (line.Header.Length == 0 && !TakeOldBus(bytes) && !TakeFrameWithoutHeader(bytes))
            Start(null, Framing.Unknown, bytes.Length, bytes, line.IsBareNumber);
    }

    // 7E8 to 7EF, or a 29-bit identifier whose target is the tester (F1): ISO 15765-4.
    static bool IsAnswer(string header) =>
        header.Length == 3 ? header[..2] == "7E" && header[2] >= '8' : header.StartsWith("18DAF1", StringComparison.Ordinal);

    void TakeFrame(string source, ReadOnlyMemory<HexByte> bytes)
    {
        var low = bytes.Span[0].Value & 15;
        switch (bytes.Span[0].Value >> 4)
        {
            case 0:
                Start(source, Framing.Can, low, bytes[1..]);
                break;
            case 1 when bytes.Length > 1:
                open[source] = Start(source, Framing.Can, (low << 8) | bytes.Span[1].Value, bytes[2..]);
                break;
            case 2 when open.TryGetValue(source, out var message) && message.NextIndex == low:
                message.Add(bytes.Span[1..]);
                message.NextIndex = (low + 1) & 15;
                break;
            case 2:
                open.Remove(source); // A frame is missing: what follows cannot be placed.
                break;
        }
    }

    RawMessage Start(string? source, Framing framing, int length, ReadOnlyMemory<HexByte> bytes, bool isDoubtful = false)
    {
        var message = new RawMessage(source == NoHeader ? null : source, framing, length, bytes, isDoubtful);
        messages.Add(message);
        return message;
    }

    // J1850 and ISO 9141-2 answers begin 48 6B (J1850 PWM: 41 6B, from memory) and the address; those of ISO 14230-4
    // begin with 80 plus the length, F1 for the tester and the address. A checksum comes last.
    bool TakeOldBus(ReadOnlyMemory<HexByte> memory)
    {
        var bytes = memory.Span;
        if (bytes.Length < 5)
            return false;
        var length = (bytes[0].Value, bytes[1].Value) switch
        {
            (0x48 or 0x41, 0x6B) => (bytes.Length - 3 - 1) | 1,
            ( >= 0x80 and < 0xC0, 0xF1) => bytes[0].Value & 0x3F,
            _ => -1,
        };
        if (length < 0)
            return false;
        var from = length == 0 ? 4 : 3; // A length of its own stands behind the header.
        Start(bytes[2].Value.ToString("X2", CultureInfo.InvariantCulture), Framing.Pairs,
            length == 0 ? bytes[3].Value : length, memory[from..]);
        return true;
    }

    bool TakeFrameWithoutHeader(ReadOnlyMemory<HexByte> memory)
    {
        var bytes = memory.Span;
        if (bytes.Length is < 2 or > 8)
            return false;
        var first = bytes[0].Value;
        var isFrame = (first >> 4) switch
        {
            0 => first is >= 2 and <= 7 && first < bytes.Length && Padding.IsOnly(bytes[(first + 1)..]) && AnswerDecoder.IsService(bytes[1].Value),
            1 => bytes.Length > 2 && AnswerDecoder.IsService(bytes[2].Value),
            2 => open.ContainsKey(NoHeader),
            _ => false,
        };
        if (isFrame)
            TakeFrame(NoHeader, memory);
        return isFrame;
    }
}
