using System.CommandLine;
using System.Globalization;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Site.Learning;
using GuideGen.Site.Planning;

namespace GuideGen.Commands;

/// <summary><c>guidegen evidence [GUIDE] [--format text|json] [--months N] [--today DATE]</c></summary>
static class EvidenceCommand
{
    const int Months = 24;

    public static Command Make(Terminal terminal, string currentFolder)
    {
        var guide = new GuideArgument(currentFolder);
        var format = OutputFormat.Option();
        var months = new Option<int>("--months") { Description = "A review older than so many months is stale.", HelpName = "N", DefaultValueFactory = _ => Months };
        months.Validators.Add(r =>
        {
            if (r.Errors.Any() || r.GetValueOrDefault<int>() is < 1 or > 600) r.AddError("--months takes a number from 1 to 600.");
        });
        var today = new Option<string>("--today") { Description = "The day to count from, such as 2026-05-31. Default: the day it is.", HelpName = "DATE" };
        today.Validators.Add(r =>
        {
            if (!TryDate(r.GetValueOrDefault<string>(), out _)) r.AddError("--today takes a date such as 2026-05-31.");
        });
        var command = new Command("evidence", "Say what the cases show, and what the guide should learn next.") { guide.Argument, format, months, today, EvidenceTreesCommand.Make(terminal, currentFolder) };
        command.SetAction(parsed =>
        {
            if (guide.Open(parsed, terminal) is not { } files) return ExitCode.WrongUsage;
            var day = TryDate(parsed.GetValue(today), out var named) ? named : terminal.Today;
            var loaded = GuideLoader.Load(files);
            if (GuideInspector.Inspect(loaded).Any(f => f.Severity == Severity.Error)) return Refuse(terminal);
            var report = new EvidenceReport(EvidenceTables.Of(SitePlan.Make(loaded.Guide), new ReviewAge(day, parsed.GetValue(months))));
            if (parsed.GetValue(format) == OutputFormat.Json) report.WriteJson(terminal.Out);
            else report.WriteText(terminal.Out);
            return ExitCode.Good;
        });
        return command;
    }

    static bool TryDate(string? text, out DateOnly date) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date);

    static int Refuse(Terminal terminal)
    {
        terminal.Error.WriteLine("guidegen: the guide has errors, so its cases cannot be weighed. 'inspect' lists them.");
        return ExitCode.Findings;
    }
}
