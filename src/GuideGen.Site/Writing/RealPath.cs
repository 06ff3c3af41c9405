namespace GuideGen.Site.Writing;

/// <summary>Where a path really leads once every symbolic link on it is followed, so that two paths can be compared.</summary>
public static class RealPath
{
    static readonly StringComparison Comparison =
        OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;

    /// <param name="path">A full path; its last parts need not exist.</param>
    /// <exception cref="IOException">The links lead in a circle.</exception>
    public static string Of(string path)
    {
        var real = Path.GetPathRoot(path)!;
        foreach (var part in path[real.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            var next = new DirectoryInfo(Path.Combine(real, part));
            real = next.LinkTarget is null ? next.FullName : Of(next.ResolveLinkTarget(returnFinalTarget: true)!.FullName);
        }

        return real;
    }

    /// <summary>True also if both are the same folder. Both paths are real.</summary>
    public static bool IsWithin(string path, string folder) =>
        (path + Path.DirectorySeparatorChar).StartsWith(Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar, Comparison);
}
