using System.Buffers;
using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text.RegularExpressions;
using GuideGen.Guide.Loading;

namespace GuideGen.Site.Writing;

/// <summary>
/// The list of files that a compile wrote, kept with them. What is not on it, or is not as it was written any more,
/// belongs to somebody else.
/// </summary>
/// <remarks>
/// A line a file: its hash, two blanks, its address. Each file is gone through once, and again only if its length or its time have changed since.
/// </remarks>
sealed partial class SiteManifest
{
    public const string FileName = "guide-files.txt";

    const int AddressStart = 66, Piece = 1 << 16;

    readonly string folder;
    readonly FrozenDictionary<string, string> hashes;
    readonly ConcurrentDictionary<string, (FileStamp Stamp, bool IsOurs)> looked;

    SiteManifest(string folder, FrozenDictionary<string, string> hashes, ConcurrentDictionary<string, (FileStamp, bool)> looked) =>
        (this.folder, this.hashes, this.looked) = (folder, hashes, looked);

    public IEnumerable<string> Addresses => hashes.Keys;

    /// <summary>Lists nothing if the folder has no list, or a file of that name which no compile wrote.</summary>
    public static SiteManifest ReadFrom(string folder)
    {
        var path = Path.Combine(folder, FileName);
        string[] lines = File.Exists(path) ? File.ReadAllLines(path) : [];
        return new SiteManifest(
            folder,
            lines.All(l => Line().IsMatch(l)) ? lines.DistinctBy(l => l[AddressStart..]).ToFrozenDictionary(l => l[AddressStart..], l => l[..64]) : FrozenDictionary<string, string>.Empty,
            []);
    }

    /// <summary>The list of the same files after their folder was moved.</summary>
    public SiteManifest MovedTo(string place) => new(place, hashes, looked);

    public static void WriteTo(string folder, IEnumerable<KeyValuePair<string, byte[]>> hashes) =>
        File.WriteAllBytes(Path.Combine(folder, FileName), Text(hashes));

    public static byte[] Text(IEnumerable<KeyValuePair<string, byte[]>> hashes) => System.Text.Encoding.UTF8.GetBytes(
        string.Concat(hashes.OrderBy(h => h.Key, StringComparer.Ordinal).Select(h => $"{Convert.ToHexStringLower(h.Value)}  {h.Key}\n")));

    public static byte[] HashOf(byte[] bytes) => SHA256.HashData(bytes);

    /// <returns>The full path of a file of ours with that content; null if there is none.</returns>
    /// <param name="hash">Its SHA-256 in hexadecimal.</param>
    public string? Find(string address, string hash) =>
        hashes.TryGetValue(address, out var written) && written == hash && IsOurs(address) ? Path.Combine(folder, address) : null;

    public bool IsOurs(string address)
    {
        if (address == FileName) return hashes.Count > 0;
        var file = new FileInfo(Path.Combine(folder, address));
        if (!hashes.TryGetValue(address, out var written) || !file.Exists || (file.Attributes.HasFlag(FileAttributes.ReparsePoint) && file.LinkTarget is not null)) return false;
        var stamp = new FileStamp(file.Length, file.LastWriteTimeUtc.Ticks);
        if (looked.TryGetValue(address, out var seen) && seen.Stamp == stamp) return seen.IsOurs;
        var isOurs = Convert.ToHexStringLower(HashOf(file)) == written;
        looked[address] = (stamp, isOurs);
        return isOurs;
    }

    static byte[] HashOf(FileInfo file)
    {
        if (file.Length > Piece)
        {
            using var content = file.OpenRead();
            return SHA256.HashData(content);
        }

        using var handle = File.OpenHandle(file.FullName);
        var piece = ArrayPool<byte>.Shared.Rent(Piece);
        var hash = SHA256.HashData(piece.AsSpan(0, FolderFiles.FromStart(handle, piece)));
        ArrayPool<byte>.Shared.Return(piece);
        return hash;
    }

    [GeneratedRegex("^[0-9a-f]{64}  .", RegexOptions.CultureInvariant)]
    private static partial Regex Line();
}
