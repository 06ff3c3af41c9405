using System.Text.Json;
using GuideGen.Testing;

namespace GuideGen.Tests;

public sealed class InspectTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void A_good_guide_is_told_to_be_good_and_nothing_is_written()
    {
        var guide = Tool.CopyGuide(temp);

        var run = Tool.Run(temp.PathTo(), "inspect", "guide");

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.EndsWith("0 errors, 0 warnings, 2 notes\n", run.Out.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(guide, "out")));
    }

    [Fact]
    public void Text_shows_the_line_and_points_at_the_place()
    {
        Tool.CopyGuide(temp);
        temp.Write("guide/content/terms.yml", "boost: { means: Air pressure, alsoo: [push] }\n");

        var run = Tool.Run(temp.PathTo(), "inspect", "guide", "--format", "text");

        Assert.Equal(1, run.Code);
        Assert.Contains(
            """
            content/terms.yml(1,31): error key-unknown: The key 'alsoo' is not known here.
                boost: { means: Air pressure, alsoo: [push] }
                                              ^^^^^
                Remove or correct it. Did you mean 'also'?
            """.ReplaceLineEndings("\n"),
            run.Out.ReplaceLineEndings("\n"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_one_array_and_nothing_else()
    {
        Tool.CopyGuide(temp);
        temp.Write("guide/content/terms.yml", "boost: { means: Air pressure, alsoo: [push] }\n");

        var run = Tool.Run(temp.PathTo(), "inspect", "guide", "--format", "json");

        Assert.Equal((1, ""), (run.Code, run.Error));
        using var json = JsonDocument.Parse(run.Out);
        var first = json.RootElement.EnumerateArray().Single(f => f.GetProperty("severity").GetString() == "error");
        Assert.Equal(("key-unknown", "content/terms.yml", 1, 31), (
            first.GetProperty("rule").GetString(),
            first.GetProperty("path").GetString(),
            first.GetProperty("line").GetInt32(),
            first.GetProperty("column").GetInt32()));
    }

    [Fact]
    public void Json_of_a_guide_without_findings_is_an_empty_array()
    {
        Tool.CopyGuide(temp);
        var page = temp.PathTo("guide", "content", "faults", "charge-air-hose-split.md");
        File.WriteAllLines(page, File.ReadAllLines(page).Where(l => !l.Contains("example.org", StringComparison.Ordinal)));

        var run = Tool.Run(temp.PathTo(), "inspect", "guide", "--format", "json");

        Assert.Equal((0, 0), (run.Code, JsonDocument.Parse(run.Out).RootElement.GetArrayLength()));
    }

    [Theory]
    [InlineData("inspect", "guide")]
    [InlineData("inspect", "guide", "--format", "json")]
    [InlineData("compile", "guide")]
    [InlineData("--help")]
    public void Piped_output_has_no_colour_and_no_control_character(params string[] arguments)
    {
        Tool.CopyGuide(temp);
        temp.Write("guide/content/terms.yml", "boost: { means: \"Air \\e[31m pressure\", \"al\\e[31mso\": [push] }\n");

        var run = Tool.Run(temp.PathTo(), arguments);

        Assert.DoesNotContain(run.Out + run.Error, c => char.IsControl(c) && c is not ('\n' or '\r'));
    }

    [Theory]
    [InlineData("inspect", "sarif", "guide/content/terms.yml")]
    [InlineData("inspect", "annotations", "::error file=guide/content/terms.yml,line=1,")]
    [InlineData("compile", "sarif", "guide/content/terms.yml")]
    [InlineData("compile", "annotations", "::error file=guide/content/terms.yml,line=1,")]
    public void Formats_for_a_code_host_count_paths_from_the_current_folder(string command, string format, string expected)
    {
        Tool.CopyGuide(temp);
        temp.Write("guide/content/terms.yml", "boost: { means: Air pressure, alsoo: [push] }\n");

        var run = Tool.Run(temp.PathTo(), command, "guide", "--format", format);

        Assert.Equal(1, run.Code);
        Assert.Contains(expected, run.Out, StringComparison.Ordinal);
    }

    [Theory, InlineData("json"), InlineData("sarif")]
    public void What_a_compile_prints_for_a_program_is_one_value_and_words_go_to_the_other_side(string format)
    {
        var guide = Tool.CopyGuide(temp);

        var run = Tool.Run(guide, "compile", "--format", format);

        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Out);
        Assert.Contains("files in", run.Error, StringComparison.Ordinal);
    }
}
