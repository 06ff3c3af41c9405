using System.CommandLine;
using GuideGen.Guide.Findings;

namespace GuideGen.Commands;

/// <summary><c>guidegen rules [ID] [--format text|json]</c></summary>
static class RulesCommand
{
    public static Command Make(Terminal terminal)
    {
        var id = new Argument<string>("ID") { Description = "The rule to explain, as a finding shows it. Without it all rules are listed.", Arity = ArgumentArity.ZeroOrOne };
        var format = OutputFormat.Option();
        var command = new Command("rules", "List the rules, or explain one with a bad and a good example.") { id, format };
        command.SetAction(parsed =>
        {
            var name = parsed.GetValue(id);
            var rules = Rules.All.Where(r => name is null || r.Id == name).ToList();
            if (rules.Count == 0) return Refuse(terminal, name!);
            var report = new RulesReport(terminal.Out);
            if (parsed.GetValue(format) == OutputFormat.Json) report.WriteJson(rules);
            else if (name is null) report.WriteList(rules);
            else report.Explain(rules[0]);
            return ExitCode.Good;
        });
        return command;
    }

    static int Refuse(Terminal terminal, string name)
    {
        terminal.Error.WriteLine($"guidegen: there is no rule '{name}'.{NearestName.Question(name, Rules.All.Select(r => r.Id))}");
        return ExitCode.WrongUsage;
    }
}
