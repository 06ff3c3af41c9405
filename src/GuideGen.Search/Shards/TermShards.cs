using System.Collections.Immutable;
using System.Text;
using GuideGen.Search.Lunr;

namespace GuideGen.Search.Shards;

/// <summary>
/// The index cut by term. A shard is a range of the sorted terms with all their postings, one line of text per term:
/// the term (shortened against the one before), its index, then per field the documents and how often each has it. Fields
/// at the end that are empty are left out.
/// </summary>
static class TermShards
{
    /// <param name="First">No term of this shard is before it, and all of the shards before are.</param>
    /// <param name="Shard">The file.</param>
    public sealed record Range(string First, Shard Shard);

    /// <param name="index">What is cut.</param>
    /// <param name="size">Characters that a shard may have; a term alone may have more.</param>
    public static ImmutableArray<Range> Cut(LunrIndex index, int size)
    {
        var ranges = ImmutableArray.CreateBuilder<Range>();
        var (lines, length, first, last) = (new List<string>(), 0, "", "");
        foreach (var term in index.SortedTerms.Where(t => IsFindable(index.Terms[t])))
        {
            var values = Values(index, term);
            if (lines.Count > 0 && length + values.Length > size)
            {
                ranges.Add(Close(first, lines, ranges.Count));
                (lines, length, first, last) = ([], 0, Border(last, index.Terms[term]), "");
            }
            lines.Add(SharedStart.Shorten(index.Terms[term], last) + values);
            (length, last) = (length + lines[^1].Length, index.Terms[term]);
        }
        if (lines.Count > 0) ranges.Add(Close(first, lines, ranges.Count));
        return ranges.DrainToImmutable();
    }

    /// <summary>lunr never matches the empty term, and half a surrogate pair cannot be written to a file.</summary>
    public static bool IsFindable(string term)
    {
        for (var i = 0; i < term.Length; i++)
        {
            if (i + 1 < term.Length && char.IsSurrogatePair(term[i], term[i + 1])) i++;
            else if (char.IsSurrogate(term[i])) return false;
        }
        return term.Length > 0;
    }

    static Range Close(string first, List<string> lines, int number) =>
        new(first, ShardScript.Write($"terms-{number}", json => json.Strings(lines)));

    /// <summary>The shortest text that is after <paramref name="last"/> and not after <paramref name="next"/>.</summary>
    static string Border(string last, string next)
    {
        var length = last.AsSpan().CommonPrefixLength(next) + 1;
        // Never between the halves of a pair.
        if (length < next.Length && char.IsHighSurrogate(next[length - 1])) length++;
        return next[..length];
    }

    static string Values(LunrIndex index, int term)
    {
        var line = new StringBuilder(" ").AppendNumber(term);
        for (var field = 0; field < index.Fields.Length; field++)
        {
            line.Append(' ');
            AppendPostings(line, index.ByTerm, term * index.Fields.Length + field);
        }
        return line.ToString().TrimEnd(' ');
    }

    /// <summary>Per document twice the gap since the one before, plus one when it has the term more than once; then how often, less two.</summary>
    static void AppendPostings(StringBuilder line, Frequencies table, int row)
    {
        var next = 0;
        for (var i = table.Starts[row]; i < table.Starts[row + 1]; i++)
        {
            var (document, count) = (table.Items[i], table.Counts[i]);
            line.AppendNumber((document - next) * 2 + (count > 1 ? 1 : 0));
            if (count > 1) line.AppendNumber(count - 2);
            next = document + 1;
        }
    }
}
