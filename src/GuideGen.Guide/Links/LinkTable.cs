using System.Collections.Frozen;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Links;

/// <summary>
/// The one place that knows where a link in a page leads. The inspection asks it what is broken and the site
/// asks it for the address, so both always agree.
/// </summary>
public sealed class LinkTable(GuideContent guide)
{
    readonly FrozenDictionary<string, IGuideEntry> byPath = guide.Entries.ToFrozenDictionary(e => e.Origin.Source.Path);

    /// <summary>Paths of all entries, relative to the guide's folder.</summary>
    public IEnumerable<string> Paths => byPath.Keys;

    /// <param name="fromPath">The file that has the link, relative to the guide's folder.</param>
    /// <param name="target">The link as it was written.</param>
    public LinkTarget Resolve(string fromPath, string target)
    {
        if (SchemeOf(target) is { } scheme)
        {
            return scheme is "http" or "https" or "mailto" ? new OutsideTarget(target) : new ForbiddenTarget();
        }

        var (path, anchor) = Split(target);
        var full = path.Length == 0 ? fromPath : Combine(fromPath, Uri.UnescapeDataString(path));
        if (full is null) return new BrokenTarget("it leaves the guide", "");
        if (byPath.TryGetValue(full, out var entry)) return new EntryTarget(entry, anchor);
        return full.StartsWith(ContentFolder, StringComparison.Ordinal) && guide.Assets.Contains(full[ContentFolder.Length..])
            ? new AssetTarget(full[ContentFolder.Length..])
            : new BrokenTarget($"there is no file {full}", full);
    }

    const string ContentFolder = "content/";

    /// <summary>The anchors that an entry has: headings of a page, steps of a tree.</summary>
    public static IEnumerable<string> AnchorsOf(IGuideEntry entry) => entry is Tree tree
        ? tree.Nodes.Select(n => n.Key.Value)
        : entry.Origin.Body.Headings.Select(h => h.Anchor);

    static (string Path, string Anchor) Split(string target)
    {
        var hash = target.IndexOf('#', StringComparison.Ordinal);
        return hash < 0 ? (target, "") : (target[..hash], Uri.UnescapeDataString(target[(hash + 1)..]));
    }

    /// <summary>The scheme in lower case; empty for an address that takes the scheme of its page; null for a path.</summary>
    static string? SchemeOf(string target)
    {
        if (target.StartsWith("//", StringComparison.Ordinal)) return "";
        var colon = target.IndexOf(':', StringComparison.Ordinal);
        var slash = target.AsSpan().IndexOfAny('/', '#', '?');
        return colon < 0 || (slash >= 0 && slash < colon) ? null : target[..colon].Trim().ToLowerInvariant();
    }

    /// <returns>Null if the path climbs out of the guide.</returns>
    static string? Combine(string fromPath, string path)
    {
        var parts = fromPath.Split('/')[..^1].ToList();
        if (path.StartsWith('/') || path.Contains('\\', StringComparison.Ordinal)) return null;
        foreach (var part in path.Split('/'))
        {
            if (part is "" or ".") continue;
            if (part != "..") parts.Add(part);
            else if (parts.Count == 0) return null;
            else parts.RemoveAt(parts.Count - 1);
        }

        return string.Join('/', parts);
    }
}
