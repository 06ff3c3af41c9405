using System.Text.Json;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Tests.Reading;

public sealed class SuggestionTests
{
    [Theory, MemberData(nameof(SuggestionRow.All), MemberType = typeof(SuggestionRow))]
    public void A_mistyped_code_gives_the_suggestions_of_its_row(int index)
    {
        var row = SuggestionRow.At(index);

        Assert.Equal(row.Want, CodeSuggester.Suggest(row.Typed, code => row.StandingOf(code.ToString())).Select(Print));
    }

    [Fact]
    public void What_was_typed_keeps_a_place_among_few()
    {
        var suggestions = CodeSuggester.Suggest("P0500", code => new(code.ToString() != "P0500", false, 0), limit: 3);

        Assert.Equal(3, suggestions.Length);
        Assert.Equal("P0500", suggestions[^1].Code.ToString());
    }

    static string Print(CodeSuggestion suggestion) =>
        suggestion.Code + (suggestion.Slip == Slip.None ? "" : " " + JsonNamingPolicy.KebabCaseLower.ConvertName(suggestion.Slip.ToString()));
}
