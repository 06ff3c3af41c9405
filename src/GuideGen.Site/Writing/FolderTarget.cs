using System.Collections.Concurrent;
using GuideGen.Guide;
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

    public int Write(IEnumerable<SiteFile> files, ClosingFile? closing = null)
    {
        using var claim = staging.Claim();
        staging.Recover();
        staging.Begin();
        var foreign = Task.Run(() => new ForeignFiles(folder));
        int count;
        try
        {
            var addresses = WriteAll(files, closing);
            RefuseIfInTheWay(foreign.GetAwaiter().GetResult(), addresses);
            count = addresses.Count;
        }
        catch
        {
            staging.Drop();
            throw;
        }

        staging.SwapIn();
        return count;
    }

    /// <returns>The addresses of all files.</returns>
    ICollection<string> WriteAll(IEnumerable<SiteFile> files, ClosingFile? closing)
    {
        var hashes = new ConcurrentDictionary<string, byte[]>();
        var folders = new ConcurrentDictionary<string, DirectoryInfo>();
        SideBySide.ForEach(files, threads, file => Put(file.Address, file.Read()));
        if (closing is not null) Put(closing.Address, closing.Make(hashes));
        SiteManifest.WriteTo(staging.Growing, hashes);
        return hashes.Keys;

        void Put(string address, byte[] bytes)
        {
            var path = staging.PathOf(address);
            folders.GetOrAdd(Path.GetDirectoryName(path)!, Directory.CreateDirectory);
            File.WriteAllBytes(path, bytes);
            hashes[address] = SiteManifest.HashOf(bytes);
        }
    }

    void RefuseIfInTheWay(ForeignFiles foreign, IEnumerable<string> addresses)
    {
        var inTheWay = foreign.InTheWayOf(addresses);
        if (inTheWay.Count == 0) return;
        var more = inTheWay.Count > NamedInMessage ? $" and {inTheWay.Count - NamedInMessage} more" : "";
        throw new SiteRefusedException(
            $"{folder} has files that no earlier compile wrote, or that were changed since, and that this one would overwrite: {string.Join(", ", inTheWay.Take(NamedInMessage))}{more}. Name another folder with --out, or move them away.");
    }
}
