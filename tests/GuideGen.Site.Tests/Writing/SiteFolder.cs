using System.Text;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Writing;

/// <summary>A site's folder in a folder of its own, with the states a compile goes through.</summary>
sealed class SiteFolder : IDisposable
{
    readonly TempFolder temp = new();

    public string Path => temp.PathTo("out");

    /// <summary>The folder that holds the site's folder.</summary>
    public string Parent => temp.PathTo();

    public string Beside(string state) => temp.PathTo(".out.guidegen-" + state);

    public string PathTo(string address) => System.IO.Path.Combine(Path, address);

    public void Write(params SiteFile[] files) => new FolderTarget(Path, 2).Write(files);

    /// <summary>Lays a file of somebody else's into the site.</summary>
    public void Lay(string address, string text = "theirs") => temp.Write(System.IO.Path.Combine("out", address), text);

    /// <summary>All files below the parent folder with their text; folders without a file end in a slash.</summary>
    public IReadOnlyList<string> Everything() => [.. Below(Parent).Where(l => !l.Contains(SiteManifest.FileName + ": ", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    public static SiteFile File(string address, string text) => new(address, () => Encoding.UTF8.GetBytes(text));

    public void Dispose() => temp.Dispose();

    IEnumerable<string> Below(string folder)
    {
        foreach (var entry in new DirectoryInfo(folder).EnumerateFileSystemInfos())
        {
            var name = System.IO.Path.GetRelativePath(Parent, entry.FullName);
            if (entry.LinkTarget is { } target) yield return $"{name} -> {target}";
            else if (entry is FileInfo) yield return $"{name}: {System.IO.File.ReadAllText(entry.FullName)}";
            else if (!Directory.EnumerateFileSystemEntries(entry.FullName).Any()) yield return name + "/";
            else foreach (var inner in Below(entry.FullName)) yield return inner;
        }
    }
}
