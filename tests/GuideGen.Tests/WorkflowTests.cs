using System.Diagnostics;
using GuideGen.Testing;
using YamlDotNet.RepresentationModel;

namespace GuideGen.Tests;

/// <summary>What a pull request is held to is what its author can run: one script, and nothing beside it.</summary>
public sealed class WorkflowTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void The_workflow_of_the_guide_runs_the_script_and_nothing_else()
    {
        var run = Steps().Where(s => s.Children.ContainsKey("run")).Select(s => s["run"].ToString());

        Assert.Equal(["bash .ci/check-guide . site guide.zip"], run);
    }

    [Fact]
    public void The_workflow_attaches_what_the_script_writes()
    {
        var attached = Steps().Single(s => s.Children.TryGetValue("uses", out var uses) && uses.ToString().StartsWith("actions/upload-artifact@", StringComparison.Ordinal));

        Assert.Equal(["site", "guide.zip"], attached["with"]["path"].ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("true", "::error file=guide/content/tasks/clear.md,line=1,")]
    [InlineData("", "content/tasks/clear.md(1,1): error front-matter-missing")]
    public void The_script_says_what_is_wrong_beside_the_lines_of_a_pull_request_or_at_the_terminal(string isRunner, string said)
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        temp.Write("guide/content/tasks/clear.md", "Clear the codes.\n");

        var run = Check(isRunner);

        Assert.Equal(1, run.Code);
        Assert.Contains(said, run.Out, StringComparison.Ordinal);
        Assert.False(Directory.Exists(temp.PathTo("site")) || File.Exists(temp.PathTo("guide.zip")));
    }

    [Fact]
    public void The_script_writes_the_site_and_its_archive_of_a_good_guide()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        var run = Check("true");

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.True(File.Exists(temp.PathTo("site", "index.html")));
        Assert.True(File.Exists(temp.PathTo("guide.zip")));
    }

    static IEnumerable<YamlMappingNode> Steps()
    {
        var workflow = new YamlStream();
        using var reader = new StreamReader(Repository.PathTo(".github", "workflows", "guide.yml"));
        workflow.Load(reader);
        return ((YamlSequenceNode)workflow.Documents[0].RootNode["jobs"]["check"]["steps"]).Cast<YamlMappingNode>();
    }

    /// <summary>As the workflow calls it, with the tool that the tests are made with.</summary>
    ToolRun Check(string isRunner)
    {
        var start = new ProcessStartInfo("bash", [Repository.PathTo(".ci", "check-guide"), "guide", "site", "guide.zip"]) { WorkingDirectory = temp.PathTo(), RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["GUIDEGEN"] = $"dotnet {Path.Combine(AppContext.BaseDirectory, "guidegen.dll")}";
        start.Environment["CI"] = isRunner;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ToolRun(process.ExitCode, output, error.Result);
    }
}
