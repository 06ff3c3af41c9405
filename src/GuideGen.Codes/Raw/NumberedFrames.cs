namespace GuideGen.Codes.Raw;

/// <summary>
/// Frames as an adapter prints them with headers off: the length on a line of its own, then "0:", "1:" and so on.
/// Where two control units answer in turns, a frame goes to the message that has waited longest for its number.
/// </summary>
sealed class NumberedFrames(List<RawMessage> messages)
{
    const int UnknownLength = 4095;

    readonly Queue<int> announced = new();
    readonly Queue<RawMessage>[] waiting = [.. Enumerable.Range(0, 16).Select(_ => new Queue<RawMessage>())];

    internal void Announce(int length) => announced.Enqueue(length);

    internal void Take(int index, ReadOnlyMemory<HexByte> bytes)
    {
        if (waiting[index].TryDequeue(out var message))
            message.Add(bytes.Span);
        else if (index == 0)
            messages.Add(message = new(null, Framing.Can, announced.TryDequeue(out var length) ? length : UnknownLength, bytes));
        else
            return;
        if (!message.IsWhole)
            waiting[(index + 1) & 15].Enqueue(message);
    }
}
