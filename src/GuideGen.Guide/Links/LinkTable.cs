using System.Collections.Frozen;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Links;

/// <summary>
/// The one place that knows where a link in a page leads. The inspection asks it what is broken and the site
/// asks it for the address, so both always agree.
/// </summary>
public sealed class LinkTable(GuideContent guide)
{
    const string ContentFolder = "content/";

    readonly FrozenSet<string> pageless = guide.Cases.Select(c => c.Origin.Path).Concat(FileSorting.SingleFiles).ToFrozenSet();

    readonly FrozenDictionary<string, IGuideEntry> byPath = guide.Entries.ToFrozenDictionary(e => e.Origin.Path);

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

        if (string.IsNullOrWhiteSpace(target)) return new BrokenTarget("it is empty", "");
        var (path, anchor) = Split(target);
        var full = path.Length == 0 ? fromPath : Combine(fromPath, Uri.UnescapeDataString(path));
        return full is null ? new BrokenTarget("it leaves the guide", "") : Find(full, anchor);
    }

    LinkTarget Find(string path, string anchor)
    {
        if (byPath.TryGetValue(path, out var entry)) return new EntryTarget(entry, anchor);
        if (pageless.Contains(path)) return new BrokenTarget("this file has no page of its own", "");
        if (guide.Files.Contains(path)) return new UnreadTarget();
        var asset = path.StartsWith(ContentFolder, StringComparison.Ordinal) ? path[ContentFolder.Length..] : "";
        return guide.Assets.Contains(asset) ? new AssetTarget(asset) : new BrokenTarget($"there is no file {path}", path);
    }

    /// <param name="asset">Relative to content/, as the guide lists it.</param>
    public static string PathOfAsset(string asset) => ContentFolder + asset;

    /// <summary>The link that an author writes in one file to come to another; both relative to the guide's folder.</summary>
    public static string Between(string fromPath, string toPath)
    {
        var (from, to) = (fromPath.Split('/')[..^1], toPath.Split('/'));
        var shared = from.Zip(to[..^1]).TakeWhile(p => p.First == p.Second).Count();
        return string.Join('/', [.. Enumerable.Repeat("..", from.Length - shared), .. to[shared..]]);
    }

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
