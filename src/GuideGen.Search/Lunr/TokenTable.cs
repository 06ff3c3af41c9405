namespace GuideGen.Search.Lunr;

/// <summary>
/// Numbers by token, for looking up millions of short spans: open addressing, with all characters in one array. A dictionary
/// of strings follows one pointer more per look-up, and with a guide's vocabulary each of them misses the processor's cache.
/// </summary>
sealed class TokenTable
{
    struct Slot
    {
        public uint Hash;
        public int Start;
        public int Length;
        public int Number;
    }

    Slot[] _slots = new Slot[1 << 12];
    char[] _characters = new char[1 << 16];
    int _count, _used;

    /// <summary>The token's number, to read or, when <paramref name="known"/> is false, to write before the next call.</summary>
    public ref int NumberOf(ReadOnlySpan<char> token, out bool known)
    {
        if (_count * 2 >= _slots.Length) Grow();
        var hash = Hash(token);
        ref var slot = ref Find(_slots, hash, token);
        known = slot.Hash != 0;
        if (!known) slot = new Slot { Hash = hash, Start = Keep(token), Length = token.Length };
        return ref slot.Number;
    }

    ref Slot Find(Slot[] slots, uint hash, ReadOnlySpan<char> token)
    {
        for (var at = hash; ; at++)
        {
            ref var slot = ref slots[at & (uint)(slots.Length - 1)];
            if (slot.Hash == 0 || (slot.Hash == hash && token.SequenceEqual(_characters.AsSpan(slot.Start, slot.Length)))) return ref slot;
        }
    }

    int Keep(ReadOnlySpan<char> token)
    {
        if (_used + token.Length > _characters.Length) Array.Resize(ref _characters, Math.Max(_characters.Length * 2, _used + token.Length));
        token.CopyTo(_characters.AsSpan(_used));
        _count++;
        _used += token.Length;
        return _used - token.Length;
    }

    void Grow()
    {
        var larger = new Slot[_slots.Length * 2];
        foreach (var slot in _slots)
            if (slot.Hash != 0) Find(larger, slot.Hash, _characters.AsSpan(slot.Start, slot.Length)) = slot;
        _slots = larger;
    }

    /// <summary>FNV-1a, its upper half folded into the lower that picks the slot; never 0, which marks a free slot.</summary>
    static uint Hash(ReadOnlySpan<char> token)
    {
        var hash = 2166136261;
        foreach (var character in token) hash = (hash ^ character) * 16777619;
        return (hash ^ (hash >> 16)) | 0x8000_0000;
    }
}
