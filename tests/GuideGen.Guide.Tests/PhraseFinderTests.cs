using CsCheck;
using GuideGen.Guide.Pages;

namespace GuideGen.Guide.Tests;

public sealed class PhraseFinderTests
{
    [Theory]
    [InlineData("the hose", "hose", "hose")]
    [InlineData("Hoses split", "hose", "Hoses")]
    [InlineData("fuses", "fuse", "fuses")]
    [InlineData("batteries", "battery", "batteries")]
    [InlineData("two air hoses", "air hose", "air hoses")]
    [InlineData("air-hose", "air hose", "air-hose")]
    [InlineData("a charge air hose", "charge air hose", "charge air hose")]
    [InlineData("airs hose", "air hose", null)]
    [InlineData("air, hose", "air hose", null)]
    [InlineData("charge air, hose", "charge air hose", null)]
    [InlineData("the air", "air hose", null)]
    [InlineData("charge air", "charge air hose", null)]
    [InlineData("", "hose", null)]
    public void A_phrase_is_found_whole_with_its_plural_and_without_a_pause_in_it(string text, string phrase, string? found) =>
        Assert.Equal(found is null ? [] : [found], In(text, phrase).Select(f => text.Substring(f.Start, f.Length)));

    [Fact]
    public void A_phrase_does_not_run_on_into_the_next_block()
    {
        const string text = "charge air hose";
        var words = Words.In(text, [new TextRun(0, 10, 1), new TextRun(11, 4, 2)]);

        Assert.Empty(Finder("air hose", "charge air hose").Find(words));
        Assert.Single(Finder("charge air").Find(words));
    }

    [Fact]
    public void Phrases_that_begin_alike_are_all_found_where_they_stand() =>
        Assert.Equal(
            ["air", "air hose", "air hose clip", "hose clip"],
            In("air hose clips", "air hose clip", "air", "hose clip", "air hose", "air filter").Select(f => f.Phrase).Order(StringComparer.Ordinal));

    /// <summary>Against the plain way: every phrase tried at every word.</summary>
    [Fact]
    public void It_finds_what_trying_every_phrase_at_every_word_finds()
    {
        var word = OneOf("a", "b", "as", "y", "ies");
        var phrases = word.Array[1, 3].Select(w => string.Join(' ', w)).Array[1, 6];
        var text = Gen.Select(word, OneOf(" ", ", ", "-")).Select((w, gap) => w + gap).Array[0, 12].Select(string.Concat);
        Gen.Select(phrases, text).Sample((wanted, said) =>
        {
            var words = Words.Whole(said);
            var plain =
                from at in Enumerable.Range(0, words.Count)
                from phrase in wanted
                where StandsAt(words, at, phrase.Split(' '))
                select (phrase, words[at].Start);
            Assert.Equal(plain.Order(), Finder(wanted).Find(words).Select(f => (f.Phrase, f.Start)).Order());
        });
    }

    static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    static bool StandsAt(List<Word> words, int at, string[] phrase) =>
        at + phrase.Length <= words.Count && Enumerable.Range(0, phrase.Length).All(i =>
            (i == 0 || !words[at + i].FollowsPause) && IsWord(words[at + i].Text, phrase[i], i == phrase.Length - 1));

    static bool IsWord(string word, string wanted, bool isLast) =>
        word == wanted || (isLast && (word == wanted + "s" || word == (wanted.EndsWith('y') ? wanted[..^1] + "ies" : wanted + "es")));

    static IEnumerable<FoundPhrase<string>> In(string text, params string[] phrases) => Finder(phrases).Find(Words.Whole(text));

    static PhraseFinder<string> Finder(params string[] phrases) => new(phrases.Select(p => (p, p)));
}
