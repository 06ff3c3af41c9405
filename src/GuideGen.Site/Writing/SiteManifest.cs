using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace GuideGen.Site.Writing;

/// <summary>
/// The list of files that a compile wrote, kept with them. What is not on it, or is not as it was written any more,
/// belongs to somebody else.
/// </summary>
/// <param name="folder">The site's folder.</param>
/// <param name="hashes">By address, the SHA-256 of the file in hexadecimal.</param>
/// <remarks>A line a file: its hash, two blanks, its address.</remarks>
sealed partial class SiteManifest(string folder, FrozenDictionary<string, string> hashes)
{
    public const string FileName = "guide-files.txt";

    const int AddressStart = 66;

    public IEnumerable<string> Addresses => hashes.Keys;

    /// <summary>Lists nothing if the folder has no list, or a file of that name which no compile wrote.</summary>
    public static SiteManifest ReadFrom(string folder)
    {
        var path = Path.Combine(folder, FileName);
        string[] lines = File.Exists(path) ? File.ReadAllLines(path) : [];
        return new SiteManifest(folder, lines.All(l => Line().IsMatch(l))
            ? lines.DistinctBy(l => l[AddressStart..]).ToFrozenDictionary(l => l[AddressStart..], l => l[..64])
            : FrozenDictionary<string, string>.Empty);
    }

    public static void WriteTo(string folder, IEnumerable<KeyValuePair<string, byte[]>> hashes) =>
        File.WriteAllBytes(Path.Combine(folder, FileName), Text(hashes));

    public static byte[] Text(IEnumerable<KeyValuePair<string, byte[]>> hashes) => System.Text.Encoding.UTF8.GetBytes(
        string.Concat(hashes.OrderBy(h => h.Key, StringComparer.Ordinal).Select(h => $"{Convert.ToHexStringLower(h.Value)}  {h.Key}\n")));

    public static byte[] HashOf(byte[] bytes) => SHA256.HashData(bytes);

    /// <param name="address">Of a file that is there.</param>
    public bool IsOurs(string address)
    {
        if (address == FileName) return hashes.Count > 0;
        var path = Path.Combine(folder, address);
        if (!hashes.TryGetValue(address, out var written) || new FileInfo(path).LinkTarget is not null) return false;
        using var file = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(file)) == written;
    }

    [GeneratedRegex("^[0-9a-f]{64}  .", RegexOptions.CultureInvariant)]
    private static partial Regex Line();
}
