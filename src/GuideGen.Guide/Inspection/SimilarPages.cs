using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;

namespace GuideGen.Guide.Inspection;

/// <summary>
/// Finds pages that say much the same, by the share of their phrases of five words that stand in another page
/// (containment of shingles; A. Broder 1997, On the resemblance and containment of documents).
/// </summary>
static class SimilarPages
{
    const int PhraseWords = 5;

    /// <summary>Fewer phrases than this say too little to be compared. From experience with the demo guide, no source.</summary>
    const int FewestPhrases = 40;

    const double MostInCommon = 0.5;

    const ulong Basis = 14695981039346656037, Prime = 1099511628211;

    public static IEnumerable<Finding> In(GuideContent guide, GuideMemory memory)
    {
        ImmutableArray<IGuideEntry> pages = [.. guide.Entries];
        var phrases = ImmutableCollectionsMarshal.AsImmutableArray(SideBySide.Map(pages, p => memory.Recall("phrases", default, p.Origin.Whole, () => PhrasesOf(p))));
        var name = $"phrases in common, {guide.Settings.Language.Value}";
        var inCommon = memory.Before<PhrasesInCommon>(name)?.Next(phrases) ?? PhrasesInCommon.Of(phrases);
        memory.Keep(name, inCommon);
        return
            from pair in inCommon.Counts.OrderBy(p => p.Key)
            let share = (double)pair.Value / phrases[pair.Key.Later].Length
            where share >= MostInCommon
            let later = pages[pair.Key.Later]
            let first = pages[pair.Key.First]
            let finding = Rules.PageSimilar.At(later.Name.Span, (share * 100).ToString("0", CultureInfo.InvariantCulture), first.Origin.Source.Path)
            select finding.Concerning(first.Origin.Slug);
    }

    /// <returns>None for a page that says too little.</returns>
    static ulong[] PhrasesOf(IGuideEntry entry)
    {
        var hashes = Words.Map(entry.Origin.Source.Text, [.. entry.Origin.Body.Runs.Where(r => !r.IsHeading)], Hash);
        var phrases = new HashSet<ulong>(hashes.Count);
        for (var i = 0; i + PhraseWords <= hashes.Count; i++) phrases.Add(Together(CollectionsMarshal.AsSpan(hashes).Slice(i, PhraseWords)));
        return phrases.Count < FewestPhrases ? [] : [.. phrases];
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
}
