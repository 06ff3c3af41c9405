namespace GuideGen.Guide.Loading;

/// <summary>The files of a guide in a folder: <c>site-config.yml</c>, its translations, and everything below <c>content/</c> and <c>theme/</c>.</summary>
/// <remarks>Hidden files and links that lead elsewhere are not part of a guide.</remarks>
public sealed class FolderFiles : IGuideFiles
{
    readonly string folder;

    public FolderFiles(string folder)
    {
        this.folder = folder;
        Paths = [.. Find().Order(StringComparer.Ordinal)];
    }

    public IReadOnlyList<string> Paths { get; }

    public bool TryRead(string path, out byte[] bytes, out string why)
    {
        try
        {
            (bytes, why) = (File.ReadAllBytes(Path.Combine(folder, path)), "");
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            (bytes, why) = ([], fault is UnauthorizedAccessException ? "no permission" : "it vanished or is locked");
            return false;
        }
    }

    IEnumerable<string> Find()
    {
        if (!Directory.Exists(folder)) yield break;
        foreach (var file in Directory.EnumerateFiles(folder, "*.yml").Select(Path.GetFileName).OfType<string>())
        {
            if (file == GuideLoader.SettingsFile || (Translation.TryParse(file, out var own) && own.Of == GuideLoader.SettingsFile)) yield return file;
        }

        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden | FileAttributes.System,
        };
        string[] parts = ["content", ThemePieces.Folder];
        foreach (var file in parts.Select(p => Path.Combine(folder, p)).Where(Directory.Exists).SelectMany(p => Directory.EnumerateFiles(p, "*", options)))
        {
            yield return Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/');
        }
    }
}
