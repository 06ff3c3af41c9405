using System.Diagnostics;
using System.Globalization;
using GuideGen.Testing;

namespace GuideGen.Tests;

/// <summary>What a run of the tool came to.</summary>
sealed record ToolRun(int Code, string Out, string Error);

/// <summary>Runs the tool in memory, as if its output went into a pipe.</summary>
static class Tool
{
    public static string SmallGuide => Repository.PathTo("tests", "GuideGen.Site.Tests", "Fixture");

    public static ToolRun Run(string currentFolder, params string[] arguments) => Run(TextReader.Null, currentFolder, arguments);

    /// <param name="input">What comes in through the pipe.</param>
    public static ToolRun Run(TextReader input, string currentFolder, params string[] arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var code = new CommandLine(Terminal.Of(input, output, error, isPiped: true), currentFolder).Run(arguments);
        return new ToolRun(code, output.ToString(), error.ToString());
    }

    /// <summary>Runs a script of the repository to its end.</summary>
    public static ToolRun RunScript(ProcessStartInfo start)
    {
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ToolRun(process.ExitCode, output, error.Result);
    }

    /// <summary>Copies the small guide, so that a test can change it.</summary>
    public static string CopyGuide(TempFolder into)
    {
        foreach (var file in Directory.EnumerateFiles(SmallGuide, "*", SearchOption.AllDirectories))
        {
            into.Write(Path.Combine("guide", Path.GetRelativePath(SmallGuide, file)), File.ReadAllText(file));
        }

        return into.PathTo("guide");
    }
}
