using System.CommandLine;

namespace GuideGen.Commands;

/// <summary><c>guidegen evidence trees</c></summary>
static class EvidenceCommand
{
    public static Command Make(Terminal terminal, string currentFolder) =>
        new("evidence", "What the cases of the guide say, in numbers.") { EvidenceTreesCommand.Make(terminal, currentFolder) };
}
