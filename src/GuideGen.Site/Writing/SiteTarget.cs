using System.Collections.Concurrent;
using System.Collections.Immutable;
using GuideGen.Guide;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Writing;

/// <summary>Where a site goes: all of it, or none of it.</summary>
public interface ISiteTarget
{
    /// <exception cref="SiteRefusedException">The target is not ours to write.</exception>
    /// <param name="files">Gone through once: what comes late may still be in the making.</param>
    /// <param name="closing">Made last, from the hashes of all others; null for a site that has none.</param>
    /// <returns>How many files the site has.</returns>
    int Write(IEnumerable<SiteFile> files, ClosingFile? closing = null);
}

/// <summary>Keeps a site in memory, for tests and for measuring.</summary>
public sealed class MemoryTarget(int threads) : ISiteTarget
{
    public ImmutableSortedDictionary<string, byte[]> Files { get; private set; } = ImmutableSortedDictionary<string, byte[]>.Empty;

    public int Write(IEnumerable<SiteFile> files, ClosingFile? closing = null)
    {
        var written = new ConcurrentDictionary<string, byte[]>();
        SideBySide.ForEach(files, threads, f => written[f.Address] = f.Read());
        if (closing is not null) written[closing.Address] = closing.Make(written.ToDictionary(w => w.Key, w => SiteManifest.HashOf(w.Value)));
        Files = written.ToImmutableSortedDictionary(StringComparer.Ordinal);
        return Files.Count;
    }
}

/// <summary>The target may not be written; the message says why and what to do. Nothing has been changed.</summary>
public sealed class SiteRefusedException(string message) : Exception(message);
