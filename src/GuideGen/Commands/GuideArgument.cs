using System.CommandLine;
using GuideGen.Guide.Loading;

namespace GuideGen.Commands;

/// <summary>The argument GUIDE: the folder that holds site-config.yml and content/.</summary>
sealed class GuideArgument
{
    readonly string currentFolder;

    public GuideArgument(string currentFolder)
    {
        this.currentFolder = currentFolder;
        PathChecks.Require(Argument);
    }

    public Argument<string> Argument { get; } = new("GUIDE")
    {
        Description = "The folder that holds site-config.yml and content/. Default: the current folder.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public string FolderOf(ParseResult parsed) => Path.GetFullPath(parsed.GetValue(Argument) ?? ".", currentFolder);

    /// <summary>Leads from the current folder to the guide, ending in a slash; empty for the current folder itself and for a guide elsewhere.</summary>
    public string PrefixOf(ParseResult parsed)
    {
        var way = Path.GetRelativePath(currentFolder, FolderOf(parsed)).Replace(Path.DirectorySeparatorChar, '/');
        var isElsewhere = way == "." || way == ".." || way.StartsWith("../", StringComparison.Ordinal) || Path.IsPathRooted(way);
        return isElsewhere ? "" : way + "/";
    }

    /// <summary>Null if the folder is not a guide; <paramref name="terminal"/> then says why.</summary>
    public FolderFiles? Open(ParseResult parsed, Terminal terminal)
    {
        var folder = FolderOf(parsed);
        if (File.Exists(Path.Combine(folder, GuideLoader.SettingsFile))) return new FolderFiles(folder);
        var what = Directory.Exists(folder) ? $"{folder} has no {GuideLoader.SettingsFile}" : $"there is no folder {folder}";
        terminal.Error.WriteLine($"guidegen: {what}. Name the folder of a guide.");
        return null;
    }
}
