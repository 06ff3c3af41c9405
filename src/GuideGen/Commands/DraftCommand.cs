using System.CommandLine;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Drafting;

namespace GuideGen.Commands;

/// <summary><c>guidegen draft KIND NAME [--guide GUIDE] [--set KEY=VALUE]</c>, <c>guidegen draft case --from FILE</c> and <c>guidegen draft guide DIR</c></summary>
static class DraftCommand
{
    public static Command Make(Terminal terminal, string currentFolder)
    {
        var command = new Command("draft", "Start a new page, or a new guide; nothing that is there is overwritten.") { Guide(terminal, currentFolder) };
        foreach (var kind in Enum.GetValues<ContentKind>()) command.Add(Page(kind, terminal, currentFolder));
        return command;
    }

    static Command Page(ContentKind kind, Terminal terminal, string currentFolder)
    {
        var word = NameKinds.Word(kind);
        var name = new Argument<string>("NAME") { Description = kind is ContentKind.Code ? "The code, such as P1A42." : "What it is called, as an owner would say it; its address is made from that." };
        var guide = new Option<string>("--guide") { Description = "The folder of the guide. Default: the current folder.", HelpName = "GUIDE" };
        var set = new Option<string[]>("--set") { Description = "A value, such as --set minutes=20. What is not set is asked for on a terminal, and otherwise left blank.", HelpName = "KEY=VALUE", AllowMultipleArgumentsPerToken = false };
        var from = new Option<string>("--from") { Description = "A file that an owner sent: checked, and filed as it is if it has no errors.", HelpName = "FILE" };
        PathChecks.Require(guide);
        var command = new Command(word, $"Start a page of the kind {word}.") { name, guide, set };
        command.SetAction(parsed =>
        {
            var folder = Path.GetFullPath(parsed.GetValue(guide) ?? ".", currentFolder);
            if (!File.Exists(Path.Combine(folder, GuideLoader.SettingsFile))) return Refuse(terminal, $"{folder} has no {GuideLoader.SettingsFile}. Name the folder of a guide with --guide.");
            if (kind is not ContentKind.Case || parsed.GetValue(from) is not { } sent)
                return parsed.GetValue(name) is { } called ? new PageDrafting(terminal, kind, folder, parsed.GetValue(guide)).Draft(called, parsed.GetValue(set) ?? []) : Refuse(terminal, "name the case, or the file that an owner sent with --from.");
            return parsed.GetValue(name) is null ? new CaseFiling(terminal, folder, currentFolder).File(sent) : Refuse(terminal, "a case that an owner sent gets its name from what it says: leave NAME out.");
        });
        if (kind is not ContentKind.Case) return command;
        name.Arity = ArgumentArity.ZeroOrOne;
        command.Add(from);
        return command;
    }

    static Command Guide(Terminal terminal, string currentFolder)
    {
        var into = new Argument<string>("DIR") { Description = "A folder that is not there yet, or is empty." };
        PathChecks.Require(into);
        var command = new Command("guide", "Start a new guide with one example of every kind; it compiles at once.") { into };
        command.SetAction(parsed =>
        {
            var folder = Path.GetFullPath(parsed.GetValue(into)!, currentFolder);
            if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()) return Refuse(terminal, $"{folder} is not empty. Name a new folder.");
            StarterGuide.Write(folder);
            SchemaCommand.Write(Path.Combine(folder, SchemaCommand.Folder));
            terminal.Out.WriteLine($"A new guide lies in {folder}. Next: {terminal.Call} compile {parsed.GetValue(into)}");
            return ExitCode.Good;
        });
        return command;
    }

    internal static int Refuse(Terminal terminal, string message)
    {
        terminal.Error.WriteLine("guidegen: " + message);
        return ExitCode.WrongUsage;
    }
}
