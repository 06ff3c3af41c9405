using System.CommandLine;
using GuideGen.Site;
using GuideGen.Site.Rendering;

namespace GuideGen.Commands;

/// <summary><c>guidegen inspect [GUIDE] [--format text|json|sarif|annotations]</c></summary>
static class InspectCommand
{
    public static Command Make(Terminal terminal, string currentFolder)
    {
        var guide = new GuideArgument(currentFolder);
        var format = OutputFormat.OfFindings();
        var command = new Command("inspect", "Inspect the content by the same rules; write nothing.") { guide.Argument, format };
        command.SetAction(parsed =>
        {
            if (guide.Open(parsed, terminal) is not { } files) return ExitCode.WrongUsage;
            var findings = GuideEditions.Read(files, ThemeFiles.BuiltIn, terminal.Today).Findings;
            new FindingReport(terminal, parsed.GetValue(format)!, guide.PrefixOf(parsed)).Write(findings);
            return FindingReport.ExitCodeOf(findings);
        });
        return command;
    }
}
