using System.Collections.Frozen;
using System.Security.Cryptography;

namespace GuideGen.Site.Writing;

/// <summary>The list of files that a compile wrote, kept with them: what is not on it belongs to somebody else.</summary>
/// <remarks>A line a file: its SHA-256 in hexadecimal, two blanks, its address.</remarks>
public sealed record SiteManifest(FrozenSet<string> Addresses)
{
    public const string FileName = "guide-files.txt";

    public static SiteManifest Empty { get; } = new(FrozenSet<string>.Empty);

    public bool Has(string address) => address == FileName || Addresses.Contains(address);

    /// <summary>Empty if the folder has no list.</summary>
    public static SiteManifest ReadFrom(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path)) return Empty;
        return new SiteManifest(File.ReadLines(path).Where(l => l.Length > 66).Select(l => l[66..]).ToFrozenSet());
    }

    public static void WriteTo(string folder, IEnumerable<KeyValuePair<string, byte[]>> hashes) =>
        File.WriteAllText(
            Path.Combine(folder, FileName),
            string.Concat(hashes.OrderBy(h => h.Key, StringComparer.Ordinal).Select(h => $"{Convert.ToHexStringLower(h.Value)}  {h.Key}\n")));

    public static byte[] HashOf(byte[] bytes) => SHA256.HashData(bytes);
}
