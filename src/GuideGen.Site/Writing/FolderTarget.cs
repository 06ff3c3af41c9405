using System.Collections.Concurrent;
using GuideGen.Guide;
using GuideGen.Guide.Keeping;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Writing;

/// <summary>
/// Writes a site into a folder: first whole into a staging folder beside it, on the same volume, then swapped in.
/// Until the swap the last good site is untouched. Files of an earlier compile go, files of others stay. What would be made again
/// byte by byte is taken over from the last site, see <see cref="SiteOrigins"/>.
/// </summary>
/// <param name="folder">The full path of the site's folder, not a link; see <see cref="SitePlace"/>.</param>
/// <param name="threads">How many files are drawn and written side by side.</param>
/// <param name="memory">What the next compile is to know; null if it is to know nothing.</param>
public sealed class FolderTarget(string folder, int threads, KeptMemory? memory = null) : ISiteTarget
{
    const int NamedInMessage = 5;

    readonly StagingFolder staging = new(folder);

    /// <summary>What the last compile into a folder left for the next one.</summary>
    public static KeptMemory MemoryOf(string folder) => new(StagingFolder.ReadKept(new StagingFolder(folder).Memory), ThisTool.Digest);

    public int Write(IEnumerable<SiteFile> files, ClosingFile? closing = null)
    {
        using var claim = staging.Claim();
        staging.Recover();
        staging.Begin();
        var old = SiteManifest.ReadFrom(folder);
        var foreign = Task.Run(() => new ForeignFiles(folder, old));
        ConcurrentDictionary<string, (FileOrigin? Origin, byte[] Hash)> written;
        try
        {
            written = WriteAll(files, closing, old);
            RefuseIfInTheWay(foreign.GetAwaiter().GetResult(), written.Keys);
        }
        catch
        {
            staging.Drop();
            throw;
        }

        // What is kept stands under digests, so it may be of a site that does not come into its place.
        var kept = Task.Run(() => Keep(written));
        try
        {
            staging.SwapIn(old);
        }
        finally
        {
            kept.Wait();
        }

        return written.Count;
    }

    void Keep(ConcurrentDictionary<string, (FileOrigin? Origin, byte[] Hash)> written)
    {
        var origins = SiteOrigins.Text(from w in written let origin = w.Value.Origin where origin is not null select KeyValuePair.Create(w.Key, origin));
        if (origins.Length > 0) staging.TryKeep(staging.Origins, file => file.Write(origins));
        if (memory is not null) staging.TryKeep(staging.Memory, memory.WriteTo);
    }

    /// <returns>By address, from what each file was made, if that is known, and the SHA-256 of its bytes.</returns>
    ConcurrentDictionary<string, (FileOrigin? Origin, byte[] Hash)> WriteAll(IEnumerable<SiteFile> files, ClosingFile? closing, SiteManifest old)
    {
        var origins = SiteOrigins.Read(StagingFolder.ReadKept(staging.Origins));
        var written = new ConcurrentDictionary<string, (FileOrigin? Origin, byte[] Hash)>();
        var folders = new ConcurrentDictionary<string, DirectoryInfo>();
        SideBySide.ForEach(files, threads, file =>
        {
            if (!TakeOver(file)) Put(file.Address, file.Basis, file.Read());
        });
        if (closing is not null) Put(closing.Address, null, closing.Make(written.ToDictionary(w => w.Key, w => w.Value.Hash)));
        SiteManifest.WriteTo(staging.Growing, written.Select(w => KeyValuePair.Create(w.Key, w.Value.Hash)));
        return written;

        bool TakeOver(SiteFile file)
        {
            if (file.Basis is not { } basis || origins.Find(file.Address, basis) is not { } origin || old.Find(file.Address, origin.Hash) is not { } made) return false;
            if (!HardLink.TryCreateOrCopy(made, PlaceFor(file.Address))) return false;
            written[file.Address] = (origin, Convert.FromHexString(origin.Hash));
            return true;
        }

        void Put(string address, FileBasis? basis, byte[] bytes)
        {
            File.WriteAllBytes(PlaceFor(address), bytes);
            var hash = SiteManifest.HashOf(bytes);
            written[address] = (basis is null ? null : SiteOrigins.Of(basis, hash), hash);
        }

        string PlaceFor(string address)
        {
            var path = staging.PathOf(address);
            folders.GetOrAdd(Path.GetDirectoryName(path)!, Directory.CreateDirectory);
            return path;
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
