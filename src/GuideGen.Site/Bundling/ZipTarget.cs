using System.IO.Compression;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Bundling;

/// <summary>
/// Writes a whole site as one ZIP archive: for a stick, a release page or a host that takes archives. The same site gives
/// the same bytes: entries in the order of their names, all of one time, with the same rights.
/// </summary>
public sealed class ZipTarget(string path, int threads) : ISiteTarget
{
    /// <summary>The first moment that the format knows (APPNOTE.TXT 4.4.6, MS-DOS time).</summary>
    static readonly DateTimeOffset Moment = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>A regular file that everybody may read, as Unix systems note it in the upper half of the attributes.</summary>
    const int Readable = 0x81A4 << 16;

    public int Write(IEnumerable<SiteFile> files, ClosingFile? closing = null)
    {
        var site = new MemoryTarget(threads);
        var count = site.Write(files, closing);
        OwnFile.Write(path, Pack(site.Files), IsOurs);
        return count;
    }

    static byte[] Pack(IReadOnlyDictionary<string, byte[]> site)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            var list = SiteManifest.Text(site.Select(f => KeyValuePair.Create(f.Key, SiteManifest.HashOf(f.Value))));
            foreach (var (address, bytes) in site.Append(KeyValuePair.Create(SiteManifest.FileName, list)).OrderBy(f => f.Key, StringComparer.Ordinal))
            {
                var entry = zip.CreateEntry(address, CompressionLevel.SmallestSize);
                (entry.LastWriteTime, entry.ExternalAttributes) = (Moment, Readable);
                using var content = entry.Open();
                content.Write(bytes);
            }
        }

        return stream.ToArray();
    }

    static bool IsOurs(byte[] bytes)
    {
        try
        {
            using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
            return zip.GetEntry(SiteManifest.FileName) is not null;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    }
}
