using System.Collections.Frozen;
using System.Text;
using System.Text.RegularExpressions;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Writing;

/// <summary>
/// From what each file of a site was made: of each address the digest of all that the bytes follow from, and of the bytes. Kept beside
/// the site, so that the next compile takes over what it would make again. It says something about contents only, so it may be
/// old, belong to another site or be deleted: then more is made anew, and never anything else.
/// </summary>
/// <remarks>A line a file: the digest of its basis, its SHA-256, its address, with blanks between.</remarks>
sealed partial class SiteOrigins(FrozenDictionary<string, (string Basis, string Hash)> files)
{
    const int HashStart = 65, AddressStart = 130;

    /// <param name="text">As <see cref="Text"/> made it; anything else lists nothing.</param>
    public static SiteOrigins Read(byte[] text)
    {
        var lines = Encoding.UTF8.GetString(text).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return new SiteOrigins(lines.All(l => Line().IsMatch(l))
            ? lines.DistinctBy(l => l[AddressStart..]).ToFrozenDictionary(l => l[AddressStart..], l => (l[..64], l[HashStart..(HashStart + 64)]))
            : FrozenDictionary<string, (string, string)>.Empty);
    }

    public static byte[] Text(IEnumerable<(string Address, Digest Basis, byte[] Hash)> files) => Encoding.UTF8.GetBytes(
        string.Concat(files.OrderBy(f => f.Address, StringComparer.Ordinal).Select(f => $"{f.Basis} {Convert.ToHexStringLower(f.Hash)} {f.Address}\n")));

    /// <returns>The SHA-256 of the bytes that follow from the basis, in hexadecimal; null if that is not known.</returns>
    public string? HashOf(string address, Digest basis) =>
        files.TryGetValue(address, out var known) && known.Basis == basis.ToString() ? known.Hash : null;

    [GeneratedRegex("^[0-9a-f]{64} [0-9a-f]{64} .", RegexOptions.CultureInvariant)]
    private static partial Regex Line();
}
