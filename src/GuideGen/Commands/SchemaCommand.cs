using System.CommandLine;
using System.Text;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;

namespace GuideGen.Commands;

/// <summary><c>guidegen schema [--out DIR]</c></summary>
static class SchemaCommand
{
    /// <summary>Where drafted pages look for the schemas, in the guide's folder; hidden, since nobody edits them.</summary>
    public const string Folder = ".schemas";

    public static Command Make(Terminal terminal, string currentFolder)
    {
        var into = new Option<string>("--out") { Description = $"The folder for the schemas. Default: {Folder} in the current folder.", HelpName = "DIR" };
        PathChecks.Require(into);
        var command = new Command("schema", "Write a JSON Schema of every kind of file, by which an editor completes and checks.") { into };
        command.SetAction(parsed =>
        {
            var folder = Path.GetFullPath(parsed.GetValue(into) ?? Folder, currentFolder);
            Write(folder);
            terminal.Out.WriteLine($"{GuideShapes.All.Length} schemas in {folder}");
            return ExitCode.Good;
        });
        return command;
    }

    /// <summary>Only files of these names are written; whatever else lies in the folder stays.</summary>
    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var (name, outline) in GuideShapes.All) File.WriteAllText(Path.Combine(folder, name + ".json"), JsonSchemas.Of(name, outline), new UTF8Encoding(false));
    }
}
