namespace GuideGen.Guide.Loading;

/// <summary>The files of a guide in a folder: <c>site-config.yml</c>, its translations, and everything below <c>content/</c> and <c>theme/</c>.</summary>
/// <remarks>
/// Hidden files and links that lead elsewhere are not part of a guide, at whatever level they stand. Of a file that is larger
/// than any that is used only the beginning is read, so that its size is seen and nothing more.
/// </remarks>
public sealed class FolderFiles : IGuideFiles
{
    /// <summary>One byte more than the largest file that is used: what is longer has this length.</summary>
    const int MostBytes = (GuideLimits.PictureMebibytes << 20) + 1;

    const FileAttributes Foreign = FileAttributes.ReparsePoint | FileAttributes.Hidden | FileAttributes.System;

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
            (bytes, why) = (Read(new FileInfo(Path.Combine(folder, path))), "");
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            (bytes, why) = ([], fault is UnauthorizedAccessException ? "no permission" : "it vanished or is locked");
            return false;
        }
    }

    static byte[] Read(FileInfo file)
    {
        // A pipe has no length, and whoever opens it waits for ever.
        if (file.Length == 0) return [];
        using var stream = file.OpenRead();
        var bytes = new byte[Math.Min(stream.Length, MostBytes)];
        return bytes[..stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
    }

    IEnumerable<string> Find()
    {
        if (!Directory.Exists(folder)) yield break;
        foreach (var file in Directory.EnumerateFiles(folder, "*.yml", new EnumerationOptions { AttributesToSkip = Foreign }).Select(Path.GetFileName).OfType<string>())
        {
            if (file == GuideLoader.SettingsFile || (Translation.TryParse(file, out var own) && own.Of == GuideLoader.SettingsFile)) yield return file;
        }

        var options = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = Foreign };
        string[] parts = ["content", ThemePieces.Folder];
        foreach (var file in parts.Select(p => Path.Combine(folder, p)).Where(IsOwnFolder).SelectMany(p => Directory.EnumerateFiles(p, "*", options)))
        {
            yield return Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/');
        }
    }

    static bool IsOwnFolder(string path) => Directory.Exists(path) && !File.GetAttributes(path).HasFlag(FileAttributes.ReparsePoint);
}
