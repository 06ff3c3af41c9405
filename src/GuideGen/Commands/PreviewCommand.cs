using System.Collections.Immutable;
using System.CommandLine;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Preview;
using GuideGen.Site.Rendering;

namespace GuideGen.Commands;

/// <summary><c>guidegen preview [GUIDE] [--port N]</c></summary>
static class PreviewCommand
{
    public static Command Make(Terminal terminal, string currentFolder)
    {
        var guide = new GuideArgument(currentFolder);
        var port = new Option<int>("--port") { Description = "The port on this machine. Default: any that is free.", HelpName = "N" };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65_535) result.AddError("--port is a number from 1 to 65535.");
        });
        var command = new Command("preview", "Show the guide in a browser on this machine and follow every edit; write nothing.") { guide.Argument, port };
        command.SetAction(async (parsed, stop) =>
        {
            if (guide.Open(parsed, terminal) is null) return ExitCode.WrongUsage;
            return await Show(terminal, guide.FolderOf(parsed), guide.PrefixOf(parsed), parsed.GetValue(port), stop);
        });
        return command;
    }

    static async Task<int> Show(Terminal terminal, string folder, string prefix, int port, CancellationToken stop)
    {
        using var watcher = new GuideWatcher(folder);
        await using var server = PreviewServer.Start(() => new FolderFiles(folder, terminal.Clock), ThemeFiles.BuiltIn, port, terminal.Today);
        var report = new FindingReport(terminal, OutputFormat.Text, prefix);
        var told = server.Findings;
        report.Write(told);
        terminal.Out.WriteLine($"{server.Address} shows the guide on this machine. Ctrl+C ends it.");
        try
        {
            while (true)
            {
                await watcher.Next(stop);
                var findings = server.Refresh();
                if (!IsSame(told, findings)) report.Write(findings);
                told = findings;
            }
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Good;
        }
    }

    static bool IsSame(ImmutableArray<Finding> one, ImmutableArray<Finding> other) =>
        one.Select(FindingFormatter.ToLine).SequenceEqual(other.Select(FindingFormatter.ToLine));
}
