using System.CommandLine;
using System.CommandLine.Help;
using GuideGen.Commands;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen;

/// <summary>Arguments in, words and an exit code out; no logic of its own.</summary>
/// <param name="currentFolder">What relative paths count from.</param>
public sealed class CommandLine(Terminal terminal, string currentFolder)
{
    // Help is the same on a narrow terminal and in a pipe; a terminal breaks long lines by itself.
    const int HelpWidth = 100;

    // A word that begins with @ is a folder like any other, not a file of more arguments.
    static readonly ParserConfiguration Plain = new() { ResponseFileTokenReplacer = null };

    public int Run(IReadOnlyList<string> arguments)
    {
        var parsed = Root().Parse(arguments, Plain);
        try
        {
            var code = parsed.Invoke(new InvocationConfiguration { Output = terminal.Out, Error = terminal.Error, EnableDefaultExceptionHandler = false });
            return parsed.Errors.Count > 0 ? ExitCode.WrongUsage : code;
        }
        catch (Exception fault) when (fault is SiteRefusedException or ThemeException)
        {
            return Refuse(fault.Message, ExitCode.WrongUsage);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Refuse(fault.Message, ExitCode.NoAccess);
        }
    }

    // A plain command with a name of its own: a root command would take its name from the running process.
    Command Root()
    {
        var help = new HelpOption { Action = new HelpAction { MaxWidth = HelpWidth }, Recursive = true };
        return new Command("guidegen", "Compiles the fault pages of one vehicle model into a linked site that works without a signal.")
        {
            help,
            new VersionOption(),
            CompileCommand.Make(terminal, currentFolder),
            PreviewCommand.Make(terminal, currentFolder),
            BundleCommand.Make(terminal, currentFolder),
            InspectCommand.Make(terminal, currentFolder),
            DecodeCommand.Make(terminal, currentFolder),
            DraftCommand.Make(terminal, currentFolder),
            RulesCommand.Make(terminal),
            EvidenceCommand.Make(terminal, currentFolder),
            SchemaCommand.Make(terminal, currentFolder),
            LicencesCommand.Make(terminal),
        };
    }

    int Refuse(string message, int code)
    {
        terminal.Error.WriteLine("guidegen: " + message);
        return code;
    }
}
