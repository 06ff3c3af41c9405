using System.Globalization;
using System.Text;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Bundling;

/// <summary>Writes a small guide as one HTML file that needs nothing else: to send, to print, or to keep on any device.</summary>
/// <exception cref="SiteRefusedException">The file would be larger than a phone opens with ease.</exception>
public sealed class SingleFileTarget(string path, int threads) : ISiteTarget
{
    /// <summary>Phones open a page of this size within seconds: common practice, no source.</summary>
    public const int LargestMebibytes = 8;

    public int Write(IEnumerable<SiteFile> files, ClosingFile? closing = null)
    {
        var site = new MemoryTarget(threads);
        var count = site.Write(files.Where(f => f.IsOfFirstEdition && SinglePageSite.Needs(f.Address)));
        var bytes = Encoding.UTF8.GetBytes(SinglePageSite.Make(site.Files));
        if (bytes.Length > LargestMebibytes << 20)
        {
            var size = (bytes.Length / (double)(1 << 20)).ToString("0.0", CultureInfo.InvariantCulture);
            throw new SiteRefusedException($"the guide in one file would have {size} MiB, more than {LargestMebibytes} MiB. Smaller pictures help; otherwise use the archive (--out), which has no such limit.");
        }

        OwnFile.Write(path, bytes, old => Encoding.UTF8.GetString(old.AsSpan(0, Math.Min(old.Length, 4096))).Contains(SinglePageSite.Mark, StringComparison.Ordinal));
        return count;
    }
}
