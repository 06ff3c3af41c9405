using System.Text.RegularExpressions;

namespace GuideGen.Site.Tests.Demo;

/// <summary>No page of the demo guide was made by copying another.</summary>
public sealed partial class DemoProseTests
{
    const int ShingleLength = 5, ShortestSentence = 10;
    const double NearCopy = 0.6;

    sealed record Sentence(string Page, string Text, HashSet<string> Shingles);

    [Fact]
    public void No_sentence_stands_almost_word_for_word_on_two_pages()
    {
        var sentences = DemoText.Pages.SelectMany(p => DemoText.SentencesOf(p.Value).Select(s => new Sentence(p.Key, s, Shingles(s)))).Where(s => s.Shingles.Count > 0).ToList();
        var holders = sentences.SelectMany(s => s.Shingles.Select(shingle => (shingle, s))).ToLookup(h => h.shingle, h => h.s);

        var copies =
            from sentence in sentences
            from other in sentence.Shingles.SelectMany(s => holders[s]).Distinct()
            where string.CompareOrdinal(sentence.Page, other.Page) < 0 && Likeness(sentence, other) >= NearCopy
            select $"{sentence.Page} and {other.Page}: {sentence.Text}";

        Assert.True(sentences.Count > 3_000, $"{sentences.Count} sentences");
        Assert.Empty(copies);
    }

    [Theory]
    [InlineData("Let the engine cool down for an hour before you touch the turbocharger.", "Let the engine cool down for an hour before you touch the manifold.", true)]
    [InlineData("Let the engine cool down for an hour before you touch the turbocharger.", "Wait an hour, then the turbocharger may be touched without harm to the hand.", false)]
    public void A_near_copy_is_recognised(string first, string second, bool isCopy) =>
        Assert.Equal(isCopy, Likeness(new("a", first, Shingles(first)), new("b", second, Shingles(second))) >= NearCopy);

    /// <summary>Share of the shingles that two sentences have in common (Jaccard).</summary>
    static double Likeness(Sentence a, Sentence b)
    {
        var common = a.Shingles.Count(b.Shingles.Contains);
        return (double)common / (a.Shingles.Count + b.Shingles.Count - common);
    }

    static HashSet<string> Shingles(string sentence)
    {
        var words = Word().Matches(sentence.ToUpperInvariant()).Select(m => m.Value).ToList();
        if (words.Count < ShortestSentence) return [];
        return [.. Enumerable.Range(0, words.Count - ShingleLength + 1).Select(i => string.Join(' ', words.Skip(i).Take(ShingleLength)))];
    }

    [GeneratedRegex("[A-Z0-9']+")]
    private static partial Regex Word();
}
