using System.CommandLine;
using System.CommandLine.Parsing;

namespace GuideGen.Commands;

/// <summary>Refuses what cannot have been meant as a folder, so that no slip of the keyboard becomes one.</summary>
static class PathChecks
{
    public static void Require(Argument<string> argument) => argument.Validators.Add(r => Check(r, argument.Name));

    public static void Require(Option<string> option) => option.Validators.Add(r => Check(r, option.Name));

    static void Check(SymbolResult result, string name)
    {
        foreach (var token in result.Tokens)
        {
            if (string.IsNullOrWhiteSpace(token.Value)) result.AddError($"{name} is empty. Name a folder.");
            else if (token.Value.StartsWith('-')) result.AddError($"Unknown option '{token.Value}'. A folder of that name is written './{token.Value}'.");
        }
    }
}
