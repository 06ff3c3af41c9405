using GuideGen.Guide.Findings;
using GuideGen.Guide.Hazards;
using GuideGen.Guide.Model;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests.Pillars;

/// <summary>The built-in hazards against the meaning of the signal words and against an independent table.</summary>
public sealed class HazardTests
{
    public static TheoryData<HazardRow> Rows => new(HazardTable.Rows);

    public static TheoryData<string, string> Cues => new(Tries.Some(HazardTable.Rows.SelectMany(r => r.Cues.Select(c => (r.Slug, c)))));

    public static TheoryData<string> Slugs => new(HazardBook.BuiltIn.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void The_book_has_exactly_the_hazards_of_the_table() =>
        Assert.Equal(HazardTable.Rows.Select(r => r.Slug).Order(StringComparer.Ordinal), HazardBook.BuiltIn.Keys.Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Rows))]
    public void A_hazard_has_the_signal_word_and_the_weight_of_the_table(HazardRow row)
    {
        var hazard = HazardBook.BuiltIn[row.Slug];

        Assert.Equal(row.Signal, SignalWords.Key(hazard.Signal.Value));
        Assert.Equal(row.IsGrave, hazard.IsGrave);
        Assert.NotEmpty(row.Basis);
    }

    [Fact]
    public void Eight_hazards_stop_the_compile() => Assert.Equal(8, HazardBook.BuiltIn.Values.Count(h => h.IsGrave));

    [Theory, MemberData(nameof(Cues))]
    public void A_cue_of_the_table_calls_for_its_hazard_or_is_too_wide_for_a_stated_reason(string slug, string cue)
    {
        var isCalledFor = Called($"Mind the {cue} here.").Contains(slug);
        var isTooWide = HazardTable.TooWide.TryGetValue((slug, cue), out var reason);

        Assert.NotEqual(isTooWide, isCalledFor);
        Assert.NotEqual("", reason);
    }

    /// <summary>
    /// ANSI Z535.6: danger and warning are about death or serious injury, caution about minor or moderate injury,
    /// notice is not about injury. So what is grave is danger or warning, and what is danger is grave.
    /// </summary>
    [Theory, MemberData(nameof(Slugs))]
    public void The_signal_word_and_the_weight_agree_as_the_standard_means_them(string slug)
    {
        var hazard = HazardBook.BuiltIn[slug];

        Assert.True(!hazard.IsGrave || hazard.Signal.Value is SignalWord.Danger or SignalWord.Warning);
        Assert.True(hazard.Signal.Value is not SignalWord.Danger || hazard.IsGrave);
    }

    /// <summary>ANSI Z535.6 ranks the words; ISO 3864-2 ranks the same three in the same order.</summary>
    [Fact]
    public void Signal_words_are_ranked_from_gravest_to_least() =>
        Assert.Equal(["danger", "warning", "caution", "notice"], Enum.GetValues<SignalWord>().Order().Select(SignalWords.Key));

    [Theory, MemberData(nameof(Slugs))]
    public void Naming_a_hazard_by_any_of_its_words_meets_it(string slug)
    {
        foreach (var word in Tries.Some(HazardBook.BuiltIn[slug].MetBy))
        {
            Assert.DoesNotContain("hazard-unmet", Inspect($"Mind this: {word.Value}.", [slug], "Look.").Select(f => f.Rule.Id));
        }

        var unmet = Inspect("Take care.", [slug], "Look.").Single(f => f.Rule.Id == "hazard-unmet");
        Assert.Equal(HazardBook.BuiltIn[slug].IsGrave ? Severity.Error : Severity.Warning, unmet.Severity);
    }

    [Theory, MemberData(nameof(Slugs))]
    public void Every_trigger_calls_for_its_hazard_in_the_singular_and_the_plural_with_the_weight_it_has(string slug)
    {
        var hazard = HazardBook.BuiltIn[slug];
        foreach (var trigger in Tries.Some(hazard.Triggers).Select(t => t.Value))
        {
            var called = Inspect("Take care.", [], $"Look at {trigger}.").Single(f => f.About == slug);
            Assert.Equal(hazard.IsGrave ? Severity.Error : Severity.Warning, called.Severity);
            Assert.Contains(slug, Called($"Look at {trigger}s."));
        }
    }

    /// <summary>A caution that the book itself gives has to be enough to meet the hazard.</summary>
    [Theory, MemberData(nameof(Slugs))]
    public void A_hazard_has_a_caution_and_words_that_name_it(string slug)
    {
        var hazard = HazardBook.BuiltIn[slug];

        Assert.NotEmpty(hazard.Cautions);
        Assert.NotEmpty(hazard.MetBy);
        Assert.NotEmpty(hazard.Triggers);
        Assert.All(hazard.Cautions, c => Assert.EndsWith(".", c.Value, StringComparison.Ordinal));
    }

    static IEnumerable<string> Called(string handsOn) =>
        Inspect("Take care.", [], handsOn).Where(f => f.Rule.Id == "hazard-undeclared").Select(f => f.About);

    static IReadOnlyList<Finding> Inspect(string safety, string[] declared, string handsOn)
    {
        const string page = "content/tasks/clear-codes.md";
        var text = BaseGuide.Text(page)
            .Replace("minutes: 5", $"minutes: 5\nhazards: [{string.Join(", ", declared)}]", StringComparison.Ordinal)
            .Replace("Nothing can hurt you here, but you lose what you did not write down.", safety, StringComparison.Ordinal)
            .Replace("2. Clear them.", $"2. {handsOn}", StringComparison.Ordinal);
        return BaseGuide.InspectWith(page, text);
    }
}
