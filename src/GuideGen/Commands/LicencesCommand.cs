using System.CommandLine;
using GuideGen.Search;
using GuideGen.Site.Licences;

namespace GuideGen.Commands;

/// <summary><c>guidegen licences</c></summary>
static class LicencesCommand
{
    public static Command Make(Terminal terminal)
    {
        var command = new Command("licences", "Show whose work this tool and its sites carry, and under which terms.");
        command.SetAction(_ =>
        {
            var packages = ShippedPackage.Of(typeof(LicencesCommand).Assembly);
            Show("GuideGen", LicenceTexts.Own);
            Show($"lunr {LunrScript.Version}, in every site", LunrScript.Licence);
            foreach (var package in packages) terminal.Out.WriteLine($"{package.Name} {package.Version}, {package.Licence}, {package.Holder}, {package.Address}");
            foreach (var id in packages.Select(p => p.Licence).Distinct().Order(StringComparer.Ordinal))
            {
                terminal.Out.WriteLine();
                Show(id, LicenceTexts.Of(id));
            }

            return ExitCode.Good;
        });
        return command;

        void Show(string title, string terms)
        {
            terminal.Out.WriteLine($"== {title}");
            terminal.Out.WriteLine();
            terminal.Out.WriteLine(terms.Trim());
            terminal.Out.WriteLine();
        }
    }
}
