using System.CommandLine;
using GuideGen.Guide.Loading;
using GuideGen.Site;
using GuideGen.Site.Bundling;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Commands;

/// <summary><c>guidegen bundle [GUIDE] [--out FILE.zip] [--single FILE.html]</c></summary>
static class BundleCommand
{
    public static Command Make(Terminal terminal, string currentFolder)
    {
        var guide = new GuideArgument(currentFolder);
        var archive = new Option<string>("--out") { Description = "The archive. Default: guide.zip in the guide's folder, unless --single is given.", HelpName = "FILE.zip" };
        var single = new Option<string>("--single") { Description = $"A small guide as one HTML file of at most {SingleFileTarget.LargestMebibytes} MiB, without search and without the lists of all standard codes.", HelpName = "FILE.html" };
        PathChecks.Require(archive);
        PathChecks.Require(single);
        var command = new Command("bundle", "Pack the site into one archive, or a small guide into one HTML file.") { guide.Argument, archive, single };
        command.SetAction(parsed =>
        {
            if (guide.Open(parsed, terminal) is not { } files) return ExitCode.WrongUsage;
            var home = guide.FolderOf(parsed);
            var packed = parsed.GetValue(archive) ?? (parsed.GetValue(single) is null ? Path.Combine(home, "guide.zip") : null);
            var targets = new List<(string Path, ISiteTarget Target)>();
            if (packed is not null) Add(packed, path => new ZipTarget(path, Environment.ProcessorCount));
            if (parsed.GetValue(single) is { } page) Add(page, path => new SingleFileTarget(path, Environment.ProcessorCount));
            return Bundle(terminal, files, targets, guide.PrefixOf(parsed));

            void Add(string named, Func<string, ISiteTarget> target)
            {
                var path = Path.GetFullPath(named, currentFolder);
                if (RealPath.IsWithin(path, Path.Combine(home, "content"))) throw new SiteRefusedException($"{path} lies in the guide's content, where it would be read as part of the guide. Name another file.");
                targets.Add((path, target(path)));
            }
        });
        return command;
    }

    static int Bundle(Terminal terminal, FolderFiles files, List<(string Path, ISiteTarget Target)> targets, string prefix)
    {
        var theme = ThemeFiles.BuiltIn;
        var isFirst = true;
        var code = ExitCode.Good;
        foreach (var (path, target) in targets)
        {
            var result = SiteCompiler.Compile(files, theme, target, new Silent(), terminal.Today);
            if (isFirst) new FindingReport(terminal, OutputFormat.Text, prefix).Write(result.Findings);
            isFirst = false;
            code = FindingReport.ExitCodeOf(result.Findings);
            if (!result.IsWritten)
            {
                terminal.Out.WriteLine("Nothing was written: mend the errors first.");
                break;
            }

            terminal.Out.WriteLine($"{result.Guide.Settings.Title.Value}: {path}, {new FileInfo(path).Length / 1024} KiB");
        }

        return code;
    }

    sealed class Silent : IProgress<CompileStage>
    {
        public void Report(CompileStage value)
        {
        }
    }
}
