using System.Collections;
using System.Globalization;
using System.Runtime.InteropServices;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;

namespace GuideGen.Guide.Inspection;

/// <summary>
/// Finds pages that say much the same, by the share of their phrases of five words that stand in another page
/// (containment of shingles; A. Broder 1997, On the resemblance and containment of documents).
/// </summary>
sealed class SimilarPagesInspection : IInspection
{
    const int PhraseWords = 5;

    /// <summary>Fewer phrases than this say too little to be compared. From experience with the demo guide, no source.</summary>
    const int FewestPhrases = 40;

    const double MostInCommon = 0.5;

    /// <summary>A phrase of so many pages is a set phrase, such as a caution, and makes no two of them alike.</summary>
    const int SetPhrasePages = 12;

    const ulong Basis = 14695981039346656037, Prime = 1099511628211;

    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var pages = SideBySide.Map([.. guide.Entries], e => (Entry: e, Phrases: PhrasesOf(e))).Where(p => p.Phrases.Length >= FewestPhrases).ToList();
        var inCommon = CountInCommon(pages.ConvertAll(p => p.Phrases));
        return
            from pair in inCommon.OrderBy(p => p.Key)
            let share = (double)pair.Value / pages[pair.Key.Later].Phrases.Length
            where share >= MostInCommon
            let later = pages[pair.Key.Later].Entry
            let first = pages[pair.Key.First].Entry
            let finding = Rules.PageSimilar.At(later.Name.Span, (share * 100).ToString("0", CultureInfo.InvariantCulture), first.Origin.Source.Path)
            select finding.Concerning(first.Origin.Slug);
    }

    static ulong[] PhrasesOf(IGuideEntry entry)
    {
        var hashes = Words.Map(entry.Origin.Source.Text, [.. entry.Origin.Body.Runs.Where(r => !r.IsHeading)], Hash);
        var phrases = new HashSet<ulong>(hashes.Count);
        for (var i = 0; i + PhraseWords <= hashes.Count; i++) phrases.Add(Together(CollectionsMarshal.AsSpan(hashes).Slice(i, PhraseWords)));
        return [.. phrases];
    }

    /// <summary>FNV-1a of 64 bits (G. Fowler, L. C. Noll, K.-P. Vo): the same on every machine, unlike the hash of a string.</summary>
    static ulong Hash(ReadOnlySpan<char> word)
    {
        var hash = Basis;
        foreach (var c in word) hash = (hash ^ char.ToLowerInvariant(c)) * Prime;
        return hash;
    }

    /// <summary>The same over the hashes of the words, so that no word is gone through once for each phrase it is in.</summary>
    static ulong Together(ReadOnlySpan<ulong> words)
    {
        var hash = Basis;
        foreach (var word in words) hash = (hash ^ word) * Prime;
        return hash ^ (hash >> 32);
    }

    static Dictionary<(int First, int Later), int> CountInCommon(List<ulong[]> pages)
    {
        var repeated = new RepeatFilter();
        foreach (var phrases in pages)
        {
            foreach (var phrase in phrases) repeated.Add(phrase);
        }

        var where = new Dictionary<ulong, List<int>>();
        for (var page = 0; page < pages.Count; page++)
        {
            foreach (var phrase in pages[page])
            {
                if (!repeated.MayHave(phrase)) continue;
                if (!where.TryGetValue(phrase, out var places)) where[phrase] = places = [];
                places.Add(page);
            }
        }

        var counts = new Dictionary<(int, int), int>();
        foreach (var places in where.Values.Where(p => p.Count is > 1 and <= SetPhrasePages))
        {
            for (var i = 0; i < places.Count; i++)
            {
                for (var j = i + 1; j < places.Count; j++) counts[(places[i], places[j])] = counts.GetValueOrDefault((places[i], places[j])) + 1;
            }
        }

        return counts;
    }

    /// <summary>
    /// Which phrases may have come more than once. Nearly all come once, and 10,000 pages have six million of them: those that
    /// are alone in one of their two slots need not be remembered.
    /// </summary>
    sealed class RepeatFilter
    {
        const int Slots = 1 << 25;

        readonly BitArray low = new(Slots), lowAgain = new(Slots), high = new(Slots), highAgain = new(Slots);

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

        static int Low(ulong phrase) => (int)(phrase % Slots);

        static int High(ulong phrase) => (int)((phrase >> 32) % Slots);
    }
}
