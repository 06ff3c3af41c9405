using System.Collections.Concurrent;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Writing;

/// <summary>
/// Writes a site into a folder: first whole into a staging folder beside it, on the same volume, then swapped in.
/// Until the swap the last good site is untouched. Files of an earlier compile go, files of others stay.
/// </summary>
/// <param name="folder">The full path of the site's folder.</param>
/// <param name="threads">How many files are drawn and written side by side.</param>
public sealed class FolderTarget(string folder, int threads) : ISiteTarget
{
    readonly StagingFolder staging = new(folder);

    public void Write(IReadOnlyList<SiteFile> files)
    {
        RefuseIfNotOurs(files);
        Directory.CreateDirectory(Path.GetDirectoryName(folder)!);
        using var claim = staging.Claim();
        staging.Recover();
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
        SiteManifest.WriteTo(staging.Path, hashes);
    }

    void RefuseIfNotOurs(IReadOnlyList<SiteFile> files)
    {
        if (File.Exists(folder)) throw new SiteRefusedException($"{folder} is a file. Name a folder for the site.");
        var ours = SiteManifest.ReadFrom(folder);
        var foreign = files.Select(f => f.Address).Append(SiteManifest.FileName)
            .Where(a => !ours.Has(a) && Path.Exists(Path.Combine(folder, a)))
            .Append(IsListForeign(ours) ? SiteManifest.FileName : null)
            .OfType<string>().Distinct().ToList();
        if (foreign.Count == 0) return;
        var more = foreign.Count > 5 ? $" and {foreign.Count - 5} more" : "";
        throw new SiteRefusedException(
            $"{folder} has files that no earlier compile wrote and that this one would overwrite: {string.Join(", ", foreign.Take(5))}{more}. Name another folder with --out, or move them away.");
    }

    /// <summary>A list with no lines of ours is somebody else's file of that name.</summary>
    bool IsListForeign(SiteManifest ours) => ours.Addresses.Count == 0 && File.Exists(Path.Combine(folder, SiteManifest.FileName));
}
