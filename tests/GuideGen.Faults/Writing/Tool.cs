using System.Diagnostics;

namespace GuideGen.Faults.Writing;

/// <summary>The tool as a process of its own, which can be killed.</summary>
static class Tool
{
    static readonly string Program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "guidegen.exe" : "guidegen");

    public static Process Start(string guide, string site, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(Program) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in new[] { "compile", guide, "--out", site }) start.ArgumentList.Add(argument);
        foreach (var (name, value) in environment) start.Environment[name] = value;
        return Process.Start(start)!;
    }

    /// <returns>The exit code, and the last line of what was said.</returns>
    public static (int Code, string Said) Run(string guide, string site, params (string Name, string Value)[] environment) =>
        End(Start(guide, site, environment));

    public static (int Code, string Said) End(Process process)
    {
        using (process)
        {
            var errors = process.StandardError.ReadToEndAsync();
            var said = process.StandardOutput.ReadToEnd() + errors.Result;
            process.WaitForExit();
            return (process.ExitCode, said.Trim().Split('\n')[^1].Trim());
        }
    }
}
