using System.CommandLine;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Trees;
using GuideGen.Site.Weighing;

namespace GuideGen.Commands;

/// <summary><c>guidegen evidence trees [GUIDE] [--format text|json]</c></summary>
static class EvidenceTreesCommand
{
    public static Command Make(Terminal terminal, string currentFolder)
    {
        var guide = new GuideArgument(currentFolder);
        var format = OutputFormat.Option();
        var command = new Command("trees", "What each tree costs to walk, and which order would cost less.") { guide.Argument, format };
        command.SetAction(parsed =>
        {
            if (guide.Open(parsed, terminal) is not { } files) return ExitCode.WrongUsage;
            var read = GuideReading.Of(GuideLoader.Load(files));
            if (read.HasErrors)
            {
                terminal.Error.WriteLine("guidegen: the guide has errors, so its trees cannot be weighed. 'inspect' lists them.");
                return ExitCode.Findings;
            }

            var report = new TreeEvidenceReport(read.Guide, new TreeEvidences(read.Guide, GuideWeights.Of(read.Guide)));
            if (parsed.GetValue(format) == OutputFormat.Json) report.WriteJson(terminal.Out);
            else report.WriteText(terminal.Out);
            return ExitCode.Good;
        });
        return command;
    }
}
