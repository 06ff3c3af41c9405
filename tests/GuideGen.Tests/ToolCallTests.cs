using System.Diagnostics;
using System.Globalization;
using GuideGen.Testing;

namespace GuideGen.Tests;

/// <summary>Whatever the tool proposes to type works as it stands.</summary>
public sealed class ToolCallTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Theory]
    [InlineData(".ci/guidegen", "/usr/bin/dotnet", "/tool/guidegen.dll", ".ci/guidegen")]
    [InlineData("", "/tool/guidegen", "/tool/guidegen.dll", "/tool/guidegen")]
    [InlineData(null, "/usr/bin/dotnet", "/my tool/guidegen.dll", "dotnet \"/my tool/guidegen.dll\"")]
    [InlineData(null, null, "/tool/guidegen.dll", "guidegen")]
    public void The_tool_knows_how_it_was_called(string? script, string? process, string program, string call) =>
        Assert.Equal(call, ToolCall.Of(script, process, program));

    [Fact]
    public void The_next_step_is_told_as_the_tool_was_called()
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        var terminal = Terminal.Of(TextReader.Null, output, output, isPiped: true) with { Call = "../tool/guidegen" };

        new CommandLine(terminal, temp.PathTo()).Run(["draft", "guide", "ours"]);
        new CommandLine(terminal, temp.PathTo()).Run(["draft", "part", "Clip", "--guide", "ours"]);

        Assert.Contains("Next: ../tool/guidegen compile ours", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("to fill. What is left to do says: ../tool/guidegen inspect ours", output.ToString(), StringComparison.Ordinal);
    }

    /// <summary>The script of the repository, in a repository that was built already: it runs what is there.</summary>
    [Fact]
    public void The_script_passes_on_words_and_exit_code_from_any_folder()
    {
        var script = Prepared();

        var good = Run(script, "rules", "blank-left");
        var wrong = Run(script, "inspect", "no such folder");

        Assert.Equal((0, "blank-left"), (good.Code, good.Out.Split(':')[0]));
        Assert.DoesNotContain("Building", good.Error, StringComparison.Ordinal);
        Assert.Equal(2, wrong.Code);
        Assert.Contains(temp.PathTo("no such folder"), wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_script_builds_again_when_something_has_changed()
    {
        var script = Prepared();
        File.SetLastWriteTimeUtc(temp.Write("repository/src/Changed.cs", "// not built yet"), File.GetLastWriteTimeUtc(script).AddMinutes(1));

        var run = Run(script, "rules");

        Assert.StartsWith("Building the tool", run.Error, StringComparison.Ordinal);
        Assert.NotEqual(0, run.Code);
    }

    /// <summary>A repository of which only the built tool is there; so a build of it fails at once.</summary>
    string Prepared()
    {
        foreach (var name in new[] { ".ci/guidegen", "Directory.Build.props", "global.json" }) temp.Write($"repository/{name}", File.ReadAllText(Repository.PathTo(name)));
        temp.Write("repository/themes/empty", "");
        var program = temp.PathTo("repository", "src", "GuideGen", "bin", "Release", "net10.0");
        Directory.CreateDirectory(program);
        foreach (var file in Directory.EnumerateFiles(AppContext.BaseDirectory)) File.CreateSymbolicLink(Path.Combine(program, Path.GetFileName(file)), file);
        temp.Write("repository/src/GuideGen/obj/built", "");
        return temp.PathTo("repository", ".ci", "guidegen");
    }

    ToolRun Run(string script, params string[] arguments) => Tool.RunScript(new ProcessStartInfo("bash", [script, .. arguments]) { WorkingDirectory = temp.PathTo() });
}
