using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>
/// Every trouble code that the standard (SAE J2012-DA) gives a meaning, checked against an openly licensed list (MIT,
/// Copyright (c) 2024 Wal33D) of 9,415 codes. Safe to use from several threads; the same code always yields the same entry.
/// </summary>
public static class CodeCatalogue
{
    const int GroupLength = 3;

    static readonly CatalogueData Data = CatalogueData.Load();
    static readonly CodeEntry?[] Made = new CodeEntry?[Data.Count];
    static readonly Head?[] Heads = new Head?[Data.HeadCount];

    /// <summary>In the order of the printed codes: B, C, P, U.</summary>
    public static ImmutableArray<CodeEntry> All => Listing.Entries;

    /// <summary>Those whose meaning does not depend on the maker.</summary>
    public static IEnumerable<CodeEntry> Standard => All.Where(e => e.Code.Owner != CodeOwner.Maker);

    /// <summary>The first three characters that have at least one code, in order.</summary>
    public static ImmutableArray<string> Groups => [.. All.Select(e => GroupOf(e.Code)).Distinct()];

    /// <returns>Null for a code without a known meaning, which is still a valid code.</returns>
    public static CodeEntry? Find(TroubleCode code)
    {
        var row = RowOf(code);
        return row < 0 ? null : EntryAt(row);
    }

    /// <summary>As <see cref="Find"/>, but nothing for a maker's own code: it means what the maker says, whatever public lists have.</summary>
    public static CodeEntry? FindStandard(TroubleCode code) => code.Owner == CodeOwner.Maker ? null : Find(code);

    /// <param name="group">The first three characters, such as "P02".</param>
    public static ImmutableArray<CodeEntry> InGroup(string group) =>
        group.Length == GroupLength ? [.. All.Where(e => GroupOf(e.Code) == group)] : [];

    internal static RelatedCodes RelatedTo(CodeEntry entry)
    {
        var family = Listing.BySubject[entry.Subject].Where(e => e.Code != entry.Code).ToLookup(e => e.Sides.SequenceEqual(entry.Sides));
        var like = family[false].Where(e => e.Condition == entry.Condition && e.InCircuit == entry.InCircuit);
        return new([.. family[true].Select(e => e.Code)], [.. like.Select(e => e.Code)], Neighbours(entry.Code));
    }

    static ImmutableArray<TroubleCode> Neighbours(TroubleCode code)
    {
        var row = RowOf(code);
        int[] beside = [row - 1, row + 1];
        return [.. beside.Where(r => r >= 0 && r < Data.Count).Select(CodeAt).Where(c => GroupOf(c) == GroupOf(code))];
    }

    static string GroupOf(TroubleCode code) => code.ToString()[..GroupLength];

    static TroubleCode CodeAt(int row) => new(Data.Codes[row]);

    static int RowOf(TroubleCode code)
    {
        int low = 0, high = Data.Count - 1;
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var order = CodeAt(middle).CompareTo(code);
            if (order == 0)
                return middle;
            (low, high) = order < 0 ? (middle + 1, high) : (low, middle - 1);
        }
        return -1;
    }

    // Two threads may both make it; whoever comes first wins, so that everyone holds the same entry.
    static CodeEntry EntryAt(int row) => Made[row] ?? Interlocked.CompareExchange(ref Made[row], MakeEntry(row), null) ?? Made[row]!;

    static CodeEntry MakeEntry(int row)
    {
        var (subject, sides) = HeadAt(Data.Head(row));
        var condition = Conditions.Get(Data.ConditionKeys[Data.Condition(row)]);
        return new(CodeAt(row), subject, sides, Data.InCircuit(row), condition, Data.Support(row));
    }

    // Several codes have the same one, and two threads may both read it: it says the same.
    static Head HeadAt(int head) => Heads[head] ??= Head.Read(Data.HeadText(head));

    sealed record Head(string Subject, ImmutableArray<Side> Sides)
    {
        public static Head Read(string line)
        {
            var (subject, sides) = SubjectLine.Read(line);
            return new(subject, sides);
        }
    }

    // Apart, so that one look-up does not make every entry.
    static class Listing
    {
        public static readonly ImmutableArray<CodeEntry> Entries = [.. Enumerable.Range(0, Data.Count).Select(EntryAt)];
        public static readonly ILookup<string, CodeEntry> BySubject = Entries.ToLookup(e => e.Subject, StringComparer.Ordinal);
    }
}
