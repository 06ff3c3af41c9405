using GuideGen.Guide.Findings;

namespace GuideGen.Guide.Tests;

public sealed class RuleExampleTests
{
    [Theory]
    [InlineData("+ one", "one")]
    [InlineData("- old\n+ new", "new")]
    [InlineData("  kept\n+ one\n  kept\n  kept\n+ two\n  kept", "one\n…\ntwo")]
    [InlineData("+ one\n+\n+ two", "one\n\ntwo")]
    [InlineData("+ one\n- old\n+ two\n- old\n- old", "one\n…\ntwo")]
    public void Of_a_change_a_reader_sees_what_an_author_would_write(string text, string shown) =>
        Assert.Equal(shown, new RuleExample("a.md", ExampleForm.Change, text).Shown);

    [Fact]
    public void Whole_files_and_words_are_shown_as_they_are_and_a_missing_file_is_said_to_be()
    {
        Assert.Equal("- a\n+ b", new RuleExample("a.md", ExampleForm.Whole, "- a\n+ b").Shown);
        Assert.Equal("(no such file)", new RuleExample("a.md", ExampleForm.Removed, "").Shown);
    }
}
