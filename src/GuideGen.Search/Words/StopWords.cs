using System.Collections.Frozen;

namespace GuideGen.Search.Words;

/// <summary>The English words that lunr.js leaves out of an index. A test holds this list against the script itself.</summary>
static class StopWords
{
    public static FrozenSet<string> All { get; } = (
        "a i am an as at be by do he if in is it me my no of on or so to us we " +
        "all and any are but can did for get got had has her him his how its let may nor not off our own say she the tis too was who why yet you " +
        "able also been dear does else ever from have hers into just like most must only said says some than that them then they this twas were what when whom will with your " +
        "about after among could every least might often other since their there these wants where which while would " +
        "across almost cannot either likely rather should because however neither"
        ).Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
