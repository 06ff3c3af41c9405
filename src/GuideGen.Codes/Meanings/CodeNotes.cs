using System.Collections.Frozen;
using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>What has to be said beside a meaning so that nobody trusts it too far.</summary>
static class CodeNotes
{
    const string MakersRange =
        "This code lies in the maker's own range. The meaning comes from one public list and may be quite another on your vehicle.";

    const string KeptBack = "The standard keeps this range back; the meaning comes from one public list.";

    const string OneList = "Only one of three public lists has this meaning; check it against the maker's list.";

    // Older lists: from memory; the current numbering: the openly licensed list that the catalogue is checked against.
    static readonly FrozenDictionary<string, string> ByCode = new Dictionary<string, string>
    {
        ["C0035"] = "Current numbering: supply of the right front wheel speed sensor. Many older lists, and some makers, use the same "
            + "code for the circuit of the left front one. Find out which wheel it is before you buy a part.",
        ["C0040"] = "Many older lists use this code for the right front wheel speed sensor.",
        ["C0045"] = "Many older lists use this code for the left rear wheel speed sensor.",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static ImmutableArray<string> For(CodeEntry entry)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (ByCode.TryGetValue(entry.Code.ToString(), out var own))
            notes.Add(own);
        if (entry.Code.Owner == CodeOwner.Maker)
            notes.Add(MakersRange);
        else if (entry.Code.Owner == CodeOwner.Reserved)
            notes.Add(KeptBack);
        else if (entry.Support == Support.Weak)
            notes.Add(OneList);
        return notes.DrainToImmutable();
    }
}
