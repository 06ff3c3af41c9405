using System.CommandLine;
using GuideGen.Commands;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen;

/// <summary>Arguments in, words and an exit code out; no logic of its own.</summary>
/// <param name="currentFolder">What relative paths count from.</param>
public sealed class CommandLine(Terminal terminal, string currentFolder)
{
    public int Run(IReadOnlyList<string> arguments)
    {
        var root = new RootCommand("Compiles the fault pages of one vehicle model into a linked site that works without a signal.")
        {
            CompileCommand.Make(terminal, currentFolder),
            InspectCommand.Make(terminal, currentFolder),
            DecodeCommand.Make(terminal, currentFolder),
        };
        var parsed = root.Parse(arguments);
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

    int Refuse(string message, int code)
    {
        terminal.Error.WriteLine("guidegen: " + message);
        return code;
    }
}
