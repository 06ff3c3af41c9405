using GuideGen.Guide.Findings;

namespace GuideGen.Guide.Tests;

public sealed class NearestNameTests
{
    static readonly string[] Keys = ["drive", "variants", "hazards", "belief", "codes", "checks"];

    [Theory]
    [InlineData("drvie", "drive")]
    [InlineData("variant", "variants")]
    [InlineData("hazrads", "hazards")]
    [InlineData("code", "codes")]
    [InlineData("chekcs", "checks")]
    [InlineData("colour", null)]
    [InlineData("", null)]
    [InlineData("x", null)]
    public void The_nearest_name_is_the_one_with_the_fewest_slips(string written, string? expected) =>
        Assert.Equal(expected, NearestName.To(written, Keys));

    [Fact]
    public void Of_equally_near_names_the_first_is_taken_and_one_that_shares_no_letter_is_not() =>
        Assert.Equal(["kb", null], (string?[])[NearestName.To("kd", ["kc", "kb"]), NearestName.To("xy", ["ab"])]);

    // Worked examples of the optimal string alignment distance: kitten/sitting (3) and Saturday/Sunday (3) are the usual
    // ones for insertions, deletions and changes; ca/abc (3, not 2) is what sets it apart from the unrestricted
    // Damerau-Levenshtein distance (L. Boytsov 2011, Indexing methods for approximate dictionary searching, JEA 16:1.1).
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("saturday", "sunday", 3)]
    [InlineData("ca", "abc", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("", "abc", 3)]
    [InlineData("abc", "abc", 0)]
    public void Slips_are_counted_as_published(string a, string b, int slips)
    {
        Assert.Equal(slips, NearestName.Slips(a, b));
        Assert.Equal(slips, NearestName.Slips(b, a));
    }
}
