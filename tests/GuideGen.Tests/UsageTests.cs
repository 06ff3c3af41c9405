using GuideGen.Testing;

namespace GuideGen.Tests;

/// <summary>What the tool says when it is asked for help, or asked wrongly. The wordings are compared as a person reads them.</summary>
public sealed class UsageTests
{
    [Fact]
    public void Help_is_as_expected()
    {
        string[][] calls = [["--help"], ["compile", "--help"], ["preview", "--help"], ["bundle", "--help"], ["inspect", "--help"], ["decode", "--help"], ["rules", "--help"], ["schema", "--help"], ["draft", "--help"], ["evidence", "--help"], ["evidence", "trees", "--help"], ["licences", "--help"]];
        var made = calls.ToDictionary(c => string.Join(' ', c).Replace(" --help", "", StringComparison.Ordinal).Replace("--help", "guidegen", StringComparison.Ordinal).Replace(' ', '-') + ".txt", c =>
        {
            var run = Tool.Run(".", c);
            Assert.Equal((0, ""), (run.Code, run.Error));
            return System.Text.Encoding.UTF8.GetBytes(run.Out.ReplaceLineEndings("\n"));
        });

        Assert.Empty(Golden.Differences(Repository.PathTo("tests", "GuideGen.Tests", "Help"), made));
    }

    [Theory]
    [InlineData("", "Required command was not provided.")]
    [InlineData("compil", "'compil' was not matched. Did you mean one of the following?")]
    [InlineData("compile --ouf x", "Unknown option '--ouf'. A folder of that name is written './--ouf'.")]
    [InlineData("compile --out", "Required argument missing for option: '--out'.")]
    [InlineData("compile --out --help-me", "Unknown option '--help-me'.")]
    [InlineData("compile . here", "Unrecognized command or argument 'here'.")]
    [InlineData("inspect --out x", "Unknown option '--out'.")]
    [InlineData("inspect --format xml", "'xml'")]
    public void Wrong_usage_says_what_is_wrong(string arguments, string words)
    {
        var run = Tool.Run(Tool.SmallGuide, arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains(words, run.Error + run.Out, StringComparison.Ordinal);
        Assert.Equal(2, run.Code);
    }

    [Theory]
    [InlineData("compile", "")]
    [InlineData("compile", "--out", "")]
    [InlineData("inspect", " ")]
    public void An_empty_name_is_not_a_folder(params string[] arguments)
    {
        var run = Tool.Run(Tool.SmallGuide, arguments);

        Assert.Contains("is empty. Name a folder.", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.Code);
    }

    [Fact]
    public void A_word_that_begins_with_an_at_sign_is_a_folder_like_any_other()
    {
        var run = Tool.Run(Tool.SmallGuide, "inspect", "@list");

        Assert.Contains(Path.Combine(Tool.SmallGuide, "@list"), run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.Code);
    }
}
