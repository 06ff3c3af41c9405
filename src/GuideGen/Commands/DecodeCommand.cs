using System.CommandLine;
using GuideGen.Codes.Reading;
using GuideGen.Guide.Loading;
using GuideGen.Site.Planning;

namespace GuideGen.Commands;

/// <summary><c>guidegen decode TEXT... | -</c></summary>
static class DecodeCommand
{
    public static Command Make(Terminal terminal, string currentFolder)
    {
        var text = new Argument<string[]>("TEXT") { Description = "Codes, a line of a report or the bytes of an answer; - reads from the standard input.", Arity = ArgumentArity.OneOrMore };
        var guide = new Option<string>("--guide") { Description = "The guide whose pages are named. Default: the current folder, if it holds one.", HelpName = "GUIDE" };
        var format = OutputFormat.Option();
        var command = new Command("decode", "Read trouble codes from loose text or raw bytes, and say what they mean.") { text, guide, format };
        command.SetAction(parsed =>
        {
            var words = parsed.GetValue(text)!;
            var written = words is ["-"] ? terminal.In.ReadToEnd() : string.Join(' ', words);
            var reading = CodeReader.Read(written, words is ["-"] ? ReadingPlace.FreeText : ReadingPlace.LookUpBox);
            var report = new DecodeReport(reading, PagesOf(Path.GetFullPath(parsed.GetValue(guide) ?? ".", currentFolder), reading));
            if (parsed.GetValue(format) == OutputFormat.Json) report.WriteJson(terminal.Out);
            else report.WriteText(terminal.Out);
            return reading.Finds.IsEmpty ? ExitCode.Findings : ExitCode.Good;
        });
        return command;
    }

    static CodePages? PagesOf(string folder, CodeReading reading) =>
        !reading.Finds.IsEmpty && File.Exists(Path.Combine(folder, GuideLoader.SettingsFile)) ? CodePages.Of(new FolderFiles(folder), reading.Finds.Select(f => f.Code)) : null;
}
