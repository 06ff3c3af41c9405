using GuideGen.Guide;

namespace GuideGen.Site.Writing;

/// <summary>What lies in a site's folder and no compile wrote it.</summary>
/// <remarks>A symbolic link counts as one thing of somebody else's: it is never followed, so nothing behind it is ever touched.</remarks>
sealed class ForeignFiles
{
    readonly string folder;
    readonly SiteManifest ours;
    readonly HashSet<string> ourFolders;
    readonly List<string> all;

    /// <param name="ours">What compiles wrote into the folder.</param>
    public ForeignFiles(string folder, SiteManifest ours)
    {
        (this.folder, this.ours) = (folder, ours);
        ourFolders = ours.Addresses.SelectMany(FoldersOf).ToHashSet(StringComparer.Ordinal);
        all = Directory.Exists(folder) ? [.. Below("")] : [];
    }

    /// <summary>Those that stand where a new file, or the folder of one, is going to be.</summary>
    public IReadOnlyList<string> InTheWayOf(IEnumerable<string> files)
    {
        var wanted = files.Append(SiteManifest.FileName).ToHashSet(StringComparer.Ordinal);
        var folders = wanted.SelectMany(FoldersOf).ToHashSet(StringComparer.Ordinal);
        return [.. all.SelectMany(InTheWay).Order(StringComparer.Ordinal)];

        IEnumerable<string> InTheWay(string address)
        {
            var name = address.TrimEnd('/');
            if (wanted.Contains(name) || folders.Contains(address)) return [name];
            return folders.Contains(name) ? Inside(address).SelectMany(InTheWay) : [];
        }
    }

    /// <summary>Moves them all into another folder.</summary>
    public void MoveTo(string other)
    {
        foreach (var address in all) Move(address, other);
    }

    void Move(string address, string other)
    {
        var (from, to) = (Path.Combine(folder, address.TrimEnd('/')), Path.Combine(other, address.TrimEnd('/')));
        if (address.EndsWith('/') && Directory.Exists(to))
        {
            foreach (var inner in Inside(address).ToList()) Move(inner, other);
            return;
        }

        // Only something laid there while the compile ran can find its place taken: it is kept under another name.
        while (Path.Exists(to)) to += ".kept";
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        // Moves a file, a folder or a link alike, since all that is renamed is the entry.
        Directory.Move(from, to);
    }

    /// <summary>Addresses; a folder in which nothing is ours stands for all that is in it, and ends in a slash.</summary>
    IEnumerable<string> Below(string place) => SideBySide.Map([.. Inside(place)], address =>
    {
        if (ourFolders.Contains(address.TrimEnd('/')) && address.EndsWith('/')) return [.. Below(address)];
        return !address.EndsWith('/') && ours.IsOurs(address) ? Array.Empty<string>() : [address];
    }).SelectMany(found => found);

    IEnumerable<string> Inside(string place) =>
        new DirectoryInfo(Path.Combine(folder, place)).EnumerateFileSystemInfos()
            .Select(i => place + i.Name + (i is DirectoryInfo && i.LinkTarget is null ? "/" : ""));

    static IEnumerable<string> FoldersOf(string address)
    {
        for (var at = address.IndexOf('/', StringComparison.Ordinal); at >= 0; at = address.IndexOf('/', at + 1)) yield return address[..at];
    }
}
