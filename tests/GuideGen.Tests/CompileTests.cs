using GuideGen.Testing;

namespace GuideGen.Tests;

public sealed class CompileTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void The_current_folder_and_its_out_folder_are_taken_when_none_is_named()
    {
        var guide = Tool.CopyGuide(temp);

        var run = Tool.Run(guide, "compile");

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.True(File.Exists(Path.Combine(guide, "out", "index.html")));
        Assert.Matches($"Small Loris guide: [0-9]+ files in {guide}/out\n$", run.Out.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Guide_and_out_are_relative_to_the_current_folder()
    {
        Tool.CopyGuide(temp);

        var run = Tool.Run(temp.PathTo(), "compile", "guide", "--out", "site/");

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.True(File.Exists(temp.PathTo("site", "index.html")));
        Assert.False(Directory.Exists(temp.PathTo("guide", "out")));
    }

    [Fact]
    public void An_error_in_the_content_stops_the_compile_and_keeps_the_last_good_site()
    {
        var guide = Tool.CopyGuide(temp);
        Tool.Run(guide, "compile");
        var before = File.ReadAllText(Path.Combine(guide, "out", "index.html"));
        temp.Write("guide/content/parts/bad.md", "no front matter");

        var run = Tool.Run(guide, "compile");

        Assert.Equal(1, run.Code);
        Assert.Contains("content/parts/bad.md(1,1): error front-matter-missing: The page does not begin with front matter.", run.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was written: mend the errors first.", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Path.Combine(guide, "out", "index.html")));
    }

    [Theory]
    [InlineData("nowhere", "there is no folder {0}. Name the folder of a guide.")]
    [InlineData("guide/content", "{0} has no site-config.yml. Name the folder of a guide.")]
    public void A_folder_that_is_not_a_guide_is_wrong_usage(string folder, string words)
    {
        Tool.CopyGuide(temp);

        var run = Tool.Run(temp.PathTo(), "compile", folder);

        Assert.Equal((2, ""), (run.Code, run.Out));
        Assert.Equal("guidegen: " + words.Replace("{0}", temp.PathTo(folder), StringComparison.Ordinal), run.Error.TrimEnd());
    }

    [Theory]
    [InlineData(".", "it is the guide's own folder")]
    [InlineData("..", "the guide lies in it")]
    [InlineData("content/out", "it lies in the guide's content")]
    public void A_site_over_the_guide_is_wrong_usage(string place, string why)
    {
        var guide = Tool.CopyGuide(temp);

        var run = Tool.Run(guide, "compile", "--out", place);

        Assert.Equal((2, ""), (run.Code, run.Out));
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(guide, place, "index.html")));
    }

    [Fact]
    public void Files_of_others_in_the_way_are_wrong_usage()
    {
        var guide = Tool.CopyGuide(temp);
        temp.Write("guide/out/index.html", "theirs");

        var run = Tool.Run(guide, "compile");

        Assert.Equal(2, run.Code);
        Assert.Contains("index.html. Name another folder with --out, or move them away.", run.Error, StringComparison.Ordinal);
        Assert.Equal("theirs", File.ReadAllText(Path.Combine(guide, "out", "index.html")));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_told_apart_from_wrong_usage()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no read-only folders");
        var parent = ReadOnlyFolder();

        var run = Tool.Run(Tool.SmallGuide, "compile", "--out", Path.Combine(parent, "out"));

        Assert.Equal(3, run.Code);
        Assert.StartsWith($"guidegen: nothing can be written in {parent}, where the site grows", run.Error, StringComparison.Ordinal);
    }

    /// <summary>Permissions do not bind an administrator, but the system's own tree does.</summary>
    string ReadOnlyFolder()
    {
        if (OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess) return "/sys";
        return Directory.CreateDirectory(temp.PathTo("locked"), UnixFileMode.UserRead | UnixFileMode.UserExecute).FullName;
    }
}
