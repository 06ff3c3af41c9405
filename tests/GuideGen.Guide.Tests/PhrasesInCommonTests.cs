using System.Collections.Immutable;
using CsCheck;
using GuideGen.Guide.Inspection;

namespace GuideGen.Guide.Tests;

public sealed class PhrasesInCommonTests
{
    // Few phrases on many pages, so that some stand on more pages than make two alike, and some share a slot of the filter.
    static readonly ulong[] Phrases = [1, 2, 3, 4, 5, 6, 1 << 16, (1 << 16) + 1];

    static readonly Gen<ulong[]> Page = Gen.Int[0, Phrases.Length - 1].Select(i => Phrases[i]).Array[0, 6].Select(p => p.Distinct().ToArray());

    [Fact]
    public void After_an_edit_the_counts_are_those_of_counting_anew() => Gen.Select(Page.Array[0, 30], Gen.Select(Gen.Int[0, 29], Page).Array[0, 24]).Sample((pages, edits) =>
    {
        var before = ImmutableArray.Create(pages);
        var after = before.ToArray();
        foreach (var (page, phrases) in edits.Where(e => e.Item1 < after.Length)) after[page] = phrases;

        Assert.Equal(InOrder(PhrasesInCommon.Of([.. after])), InOrder(PhrasesInCommon.Of(before).Next([.. after])));
    });

    [Fact]
    public void Another_number_of_pages_is_counted_anew() =>
        Assert.Equal([((0, 1), 2)], InOrder(PhrasesInCommon.Of([[1, 2]]).Next([[1, 2], [2, 1]])));

    static IEnumerable<((int, int), int)> InOrder(PhrasesInCommon phrases) => phrases.Counts.OrderBy(c => c.Key).Select(c => (c.Key, c.Value));
}
