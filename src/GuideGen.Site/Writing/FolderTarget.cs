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

    public void Write(IReadOnlyList<SiteFile> files, ClosingFile? closing = null)
    {
        using var claim = staging.Claim();
        staging.Recover();
        RefuseIfInTheWay(files.Select(f => f.Address).Concat(closing is null ? [] : [closing.Address]));
        staging.Begin();
        try
        {
            WriteAll(files, closing);
        }
        catch
        {
            staging.Drop();
            throw;
        }

        staging.SwapIn();
    }

    void WriteAll(IReadOnlyList<SiteFile> files, ClosingFile? closing)
    {
        foreach (var folderOfFile in files.Select(f => Path.GetDirectoryName(staging.PathOf(f.Address))!).Distinct()) Directory.CreateDirectory(folderOfFile);
        var hashes = new ConcurrentDictionary<string, byte[]>();
        SideBySide.ForEach(files, threads, file => Put(file.Address, file.Read()));
        if (closing is not null) Put(closing.Address, closing.Make(hashes));
        SiteManifest.WriteTo(staging.Growing, hashes);

        void Put(string address, byte[] bytes)
        {
            File.WriteAllBytes(staging.PathOf(address), bytes);
            hashes[address] = SiteManifest.HashOf(bytes);
        }
    }

    void RefuseIfInTheWay(IEnumerable<string> addresses)
    {
        var foreign = new ForeignFiles(folder).InTheWayOf(addresses);
        if (foreign.Count == 0) return;
        var more = foreign.Count > NamedInMessage ? $" and {foreign.Count - NamedInMessage} more" : "";
        throw new SiteRefusedException(
            $"{folder} has files that no earlier compile wrote, or that were changed since, and that this one would overwrite: {string.Join(", ", foreign.Take(NamedInMessage))}{more}. Name another folder with --out, or move them away.");
    }
}
