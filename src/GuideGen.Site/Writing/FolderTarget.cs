using System.Collections.Concurrent;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Writing;

/// <summary>
/// Writes a site into a folder: first whole into a staging folder beside it, on the same volume, then swapped in.
/// Until the swap the last good site is untouched. Files of an earlier compile go, files of others stay.
/// </summary>
/// <param name="folder">The full path of the site's folder, not a link; see <see cref="SitePlace"/>.</param>
/// <param name="threads">How many files are drawn and written side by side.</param>
public sealed class FolderTarget(string folder, int threads) : ISiteTarget
{
    const int NamedInMessage = 5;

    readonly StagingFolder staging = new(folder);

    public void Write(IReadOnlyList<SiteFile> files)
    {
        using var claim = staging.Claim();
        staging.Recover();
        RefuseIfInTheWay(files);
        staging.Begin();
        try
        {
            WriteAll(files);
        }
        catch
        {
            staging.Drop();
            throw;
        }

        staging.SwapIn();
    }

    void WriteAll(IReadOnlyList<SiteFile> files)
    {
        foreach (var folderOfFile in files.Select(f => Path.GetDirectoryName(staging.PathOf(f.Address))!).Distinct()) Directory.CreateDirectory(folderOfFile);
        var hashes = new ConcurrentBag<KeyValuePair<string, byte[]>>();
        SideBySide.ForEach(files, threads, file =>
        {
            var bytes = file.Read();
            File.WriteAllBytes(staging.PathOf(file.Address), bytes);
            hashes.Add(new(file.Address, SiteManifest.HashOf(bytes)));
        });
        SiteManifest.WriteTo(staging.Growing, hashes);
    }

    void RefuseIfInTheWay(IReadOnlyList<SiteFile> files)
    {
        var foreign = new ForeignFiles(folder).InTheWayOf(files.Select(f => f.Address));
        if (foreign.Count == 0) return;
        var more = foreign.Count > NamedInMessage ? $" and {foreign.Count - NamedInMessage} more" : "";
        throw new SiteRefusedException(
            $"{folder} has files that no earlier compile wrote, or that were changed since, and that this one would overwrite: {string.Join(", ", foreign.Take(NamedInMessage))}{more}. Name another folder with --out, or move them away.");
    }
}
