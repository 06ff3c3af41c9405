using System.Collections.Frozen;
using System.Text;
using System.Text.RegularExpressions;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Writing;

/// <summary>From what a file was made.</summary>
/// <param name="Basis">The digest of all that its bytes follow from, in hexadecimal.</param>
/// <param name="Hash">Its SHA-256 in hexadecimal.</param>
/// <param name="Asked">See <see cref="FileBasis.Asked"/>.</param>
sealed record FileOrigin(string Basis, string Hash, string Asked);

/// <summary>
/// From what each file of a site was made. Kept beside the site, so that the next compile takes over what it would make again. It says
/// something about contents only, so it may be old, belong to another site or be deleted: then more is made anew, and never anything else.
/// </summary>
/// <remarks>A line a file: the digest of its basis, its SHA-256, what it asked for (a dash for nothing), its address, with blanks between.</remarks>
sealed partial class SiteOrigins(FrozenDictionary<string, FileOrigin> files)
{
    const string Nothing = "-";

    /// <param name="text">As <see cref="Text"/> made it; anything else lists nothing.</param>
    public static SiteOrigins Read(byte[] text)
    {
        var lines = Encoding.UTF8.GetString(text).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return new SiteOrigins(lines.All(l => Line().IsMatch(l))
            ? lines.Select(l => l.Split(' ', 4)).DistinctBy(l => l[3]).ToFrozenDictionary(l => l[3], l => new FileOrigin(l[0], l[1], l[2] == Nothing ? "" : l[2]))
            : FrozenDictionary<string, FileOrigin>.Empty);
    }

    public static byte[] Text(IEnumerable<KeyValuePair<string, FileOrigin>> files) => Encoding.UTF8.GetBytes(
        string.Concat(files.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => $"{f.Value.Basis} {f.Value.Hash} {(f.Value.Asked.Length == 0 ? Nothing : f.Value.Asked)} {f.Key}\n")));

    /// <param name="basis">Of a file that has been made.</param>
    /// <param name="hash">Its SHA-256.</param>
    public static FileOrigin Of(FileBasis basis, byte[] hash) =>
        new((basis.DigestBy(basis.Asked) ?? throw new InvalidOperationException($"a file asked for something that has no digest: {basis.Asked}")).ToString(), Convert.ToHexStringLower(hash), basis.Asked);

    /// <returns>Null if it is not known what follows from the basis.</returns>
    public FileOrigin? Find(string address, FileBasis basis) =>
        files.TryGetValue(address, out var known) && basis.DigestBy(known.Asked)?.ToString() == known.Basis ? known : null;

    [GeneratedRegex("^[0-9a-f]{64} [0-9a-f]{64} [^ ]+ .", RegexOptions.CultureInvariant)]
    private static partial Regex Line();
}
