using GuideGen.Search.Words;

namespace GuideGen.Search.Tests;

public sealed class WordsTests
{
    static readonly LunrOracle Oracle = new();

    [Fact]
    public void The_stemmer_agrees_with_lunr_on_every_word()
    {
        var words = SampleTexts.Words(6_000).Distinct().ToList();

        Assert.True(words.Count > 4_000);
        Assert.All(words, w => Assert.Equal(Oracle.Stem(w), PorterStemmer.Stem(w)));
    }

    // Porter 1980, the examples beside the rules of each step; where lunr.js differs from the paper it is not listed.
    [Theory]
    [InlineData("caresses", "caress"), InlineData("ponies", "poni"), InlineData("cats", "cat")]
    [InlineData("feed", "feed"), InlineData("plastered", "plaster"), InlineData("motoring", "motor"), InlineData("sing", "sing")]
    [InlineData("hopping", "hop"), InlineData("falling", "fall"), InlineData("filing", "file"), InlineData("happy", "happi")]
    [InlineData("triplicate", "triplic"), InlineData("hopefulness", "hope"), InlineData("goodness", "good")]
    [InlineData("revival", "reviv"), InlineData("adjustable", "adjust"), InlineData("effective", "effect")]
    [InlineData("probate", "probat"), InlineData("rate", "rate"), InlineData("controll", "control"), InlineData("roll", "roll")]
    public void The_stemmer_gives_the_examples_of_its_paper(string word, string stem) => Assert.Equal(stem, PorterStemmer.Stem(word));

    [Fact]
    public void The_stop_words_are_those_of_lunr()
    {
        Assert.All(StopWords.All, w => Assert.True(Oracle.IsStopWord(w), w));
        Assert.All(SampleTexts.Words(2_000), w => Assert.Equal(Oracle.IsStopWord(w), StopWords.All.Contains(w)));
        Assert.Equal(119, StopWords.All.Count);
    }

    [Theory]
    [InlineData("İD"), InlineData("ΟΔΟΣ"), InlineData("ΑΣ ΑΣ'Α"), InlineData("ΣΑΣ"), InlineData("Σ"), InlineData("ΑΣ́ Β"), InlineData("ΑΣ.Β Σ2 2Σ ΑΣ2"), InlineData("𐐀ΑΣ ÀÉß")]
    public void Lower_case_is_that_of_a_browser(string text) => Assert.Equal(Oracle.Lower(text), LowerCase.Of(text));
}
