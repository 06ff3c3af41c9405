using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Publishing;

/// <summary>
/// The theme's styles and scripts under names that change with their content, so that a host may let browsers keep them
/// for good. Templates and scripts write <c>assets/name.ext</c>; the hash is put in when a page is drawn, and by load.js.
/// </summary>
sealed class AssetNames
{
    public const string Folder = "assets/";

    /// <summary>Brings all other scripts, so it carries the list of their names.</summary>
    const string Loader = "script/load.js";

    readonly FrozenDictionary<string, string> names;

    public AssetNames(ThemeFiles theme)
    {
        var sources = theme.Below("style").Concat(theme.Below("script").Where(s => s is not ServiceWorker.Source and not Loader)).ToList();
        var files = sources.ConvertAll(s => (Name: Path.GetFileName(s), Bytes: theme.Bytes(s)));
        var others = files.ToDictionary(f => f.Name, f => Hashed(f.Name, f.Bytes), StringComparer.Ordinal);
        if (theme.Has(Loader)) files.Add((Path.GetFileName(Loader), [.. ListOf(others), .. theme.Bytes(Loader)]));
        names = files.ToFrozenDictionary(f => f.Name, f => Hashed(f.Name, f.Bytes), StringComparer.Ordinal);
        Files = [.. files.Select(f => new SiteFile(Folder + names[f.Name], () => f.Bytes))];
    }

    public ImmutableArray<SiteFile> Files { get; }

    /// <summary>As the theme calls them.</summary>
    public IReadOnlyCollection<string> Names => names.Keys;

    /// <summary>The address of an asset from the site's root.</summary>
    /// <param name="name">As the theme calls it, such as <c>workshop.css</c>.</param>
    /// <exception cref="ThemeException">The theme has no such file.</exception>
    public string this[string name] =>
        Folder + (names.TryGetValue(name, out var hashed) ? hashed : throw new ThemeException($"a template asks for {Folder}{name}, which is neither in style/ nor in script/"));

    /// <summary>Puts the hash into every address of an asset on a page.</summary>
    /// <param name="root">The way from the page to the site's root.</param>
    /// <remarks>Pages are long and name few assets, so that only the folder is looked for.</remarks>
    /// <param name="page">Where the page goes.</param>
    public void PutInto(ReadOnlySpan<char> html, string root, TextBuffer page)
    {
        var (done, from) = (0, 0);
        while (html[from..].IndexOf(Folder, StringComparison.Ordinal) is var found and >= 0)
        {
            var name = from + found + Folder.Length;
            var length = html[name..].IndexOf('"');
            if (length > 0 && Starts(html[..(from + found)], root))
            {
                page.Append(html[done..(from + found)]);
                page.Append(this[html.Slice(name, length).ToString()]);
                done = name + length;
            }

            from = name;
        }

        page.Append(html[done..]);
    }

    /// <summary>True where an address begins, and what of it is written so far is the way to the root.</summary>
    static bool Starts(ReadOnlySpan<char> before, string root) =>
        before.EndsWith(root, StringComparison.Ordinal) && before[..^root.Length] is var tag && (tag.EndsWith(" href=\"") || tag.EndsWith(" src=\""));

    static string Hashed(string name, byte[] bytes) =>
        $"{Path.GetFileNameWithoutExtension(name)}.{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(..4))}{Path.GetExtension(name)}";

    static byte[] ListOf(Dictionary<string, string> names) =>
        Encoding.UTF8.GetBytes($"((globalThis.GuideGen ??= {{}}).data ??= {{}}).assets = {JsonSerializer.Serialize(new SortedDictionary<string, string>(names, StringComparer.Ordinal), SiteJson.Default.SortedDictionaryStringString)};\n");
}
