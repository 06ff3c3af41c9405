using System.Collections;
using System.Collections.Immutable;
using System.Numerics;

namespace GuideGen.Guide.Inspection;

/// <summary>How many phrases each two pages have in common.</summary>
sealed class PhrasesInCommon
{
    /// <summary>A phrase of so many pages is a set phrase, such as a caution, and makes no two of them alike.</summary>
    const int SetPhrasePages = 12;

    /// <summary>With more pages changed than this, counting anew is as quick.</summary>
    const int MostChanged = 20;

    readonly ImmutableArray<ulong[]> pages;
    readonly Dictionary<(int First, int Later), int> counts;

    PhrasesInCommon(ImmutableArray<ulong[]> pages, Dictionary<(int, int), int> counts) => (this.pages, this.counts) = (pages, counts);

    /// <summary>By the places of the two pages, without those that have none.</summary>
    public IReadOnlyDictionary<(int First, int Later), int> Counts => counts;

    /// <param name="pages">The phrases of each page, each once.</param>
    public static PhrasesInCommon Of(ImmutableArray<ulong[]> pages)
    {
        var repeated = new RepeatFilter(pages.Sum(p => p.Length));
        foreach (var phrases in pages)
        {
            foreach (var phrase in phrases) repeated.Add(phrase);
        }

        var counts = new Dictionary<(int, int), int>();
        foreach (var places in Places(pages, repeated.MayHave).Values) Count(counts, places, 1);
        return new PhrasesInCommon(pages, counts);
    }

    /// <summary>The same after an edit: only phrases that came or went are counted anew.</summary>
    /// <param name="next">Arrays that are the same as before stand for unchanged pages.</param>
    public PhrasesInCommon Next(ImmutableArray<ulong[]> next)
    {
        if (next.Length != pages.Length) return Of(next);
        var changed = Enumerable.Range(0, pages.Length).Where(i => pages[i] != next[i]).ToList();
        if (changed.Count > MostChanged) return Of(next);
        var turned = new HashSet<ulong>();
        foreach (var page in changed) turned.UnionWith(pages[page].Except(next[page]).Concat(next[page].Except(pages[page])));
        var isTurned = new BitArray(1 << 16);
        foreach (var phrase in turned) isTurned[(ushort)phrase] = true;
        var after = new Dictionary<(int, int), int>(counts);
        foreach (var places in Places(pages, Concerns).Values) Count(after, places, -1);
        foreach (var places in Places(next, Concerns).Values) Count(after, places, 1);
        return new PhrasesInCommon(next, after);

        bool Concerns(ulong phrase) => isTurned[(ushort)phrase] && turned.Contains(phrase);
    }

    /// <summary>On which pages phrases stand.</summary>
    static Dictionary<ulong, List<int>> Places(ImmutableArray<ulong[]> pages, Func<ulong, bool> isWanted)
    {
        var where = new Dictionary<ulong, List<int>>();
        for (var page = 0; page < pages.Length; page++)
        {
            foreach (var phrase in pages[page])
            {
                if (!isWanted(phrase)) continue;
                if (!where.TryGetValue(phrase, out var places)) where[phrase] = places = [];
                places.Add(page);
            }
        }

        return where;
    }

    static void Count(Dictionary<(int, int), int> counts, List<int> places, int by)
    {
        if (places.Count > SetPhrasePages) return;
        for (var i = 0; i < places.Count; i++)
        {
            for (var j = i + 1; j < places.Count; j++)
            {
                var count = counts.GetValueOrDefault((places[i], places[j])) + by;
                if (count == 0) counts.Remove((places[i], places[j]));
                else counts[(places[i], places[j])] = count;
            }
        }
    }

    /// <summary>
    /// Which phrases may have come more than once. Nearly all come once, and 10,000 pages have six million of them: those that
    /// are alone in one of their two slots need not be remembered.
    /// </summary>
    sealed class RepeatFilter
    {
        const int SlotsOfPhrase = 4;

        readonly uint slots;
        readonly BitArray low, lowAgain, high, highAgain;

        public RepeatFilter(int phrases)
        {
            slots = BitOperations.RoundUpToPowerOf2((uint)(SlotsOfPhrase * phrases) + 1);
            (low, lowAgain, high, highAgain) = (new((int)slots), new((int)slots), new((int)slots), new((int)slots));
        }

        public void Add(ulong phrase)
        {
            Add(low, lowAgain, Low(phrase));
            Add(high, highAgain, High(phrase));
        }

        public bool MayHave(ulong phrase) => lowAgain[Low(phrase)] && highAgain[High(phrase)];

        static void Add(BitArray once, BitArray again, int slot)
        {
            if (once[slot]) again[slot] = true;
            else once[slot] = true;
        }

        int Low(ulong phrase) => (int)(phrase & (slots - 1));

        int High(ulong phrase) => (int)((phrase >> 32) & (slots - 1));
    }
}
