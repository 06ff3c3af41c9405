using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace GuideGen.Site.Rendering;

/// <summary>The script that keeps the whole guide on a device: the theme's worker with the list of files in front of it.</summary>
static class ServiceWorker
{
    public const string Address = "keep.js";

    public const string Source = "script/keep.js";

    /// <summary>What stays if a device has no room for the rest: the start page, codes and safety, with what they are drawn from.</summary>
    static readonly string[] EssentialPages = ["index.html", "codes.html", "safety.html", "404.html", WebManifest.Address];

    public static ClosingFile Of(ThemeFiles theme) =>
        new(Address, hashes => Encoding.UTF8.GetBytes($"const GUIDE = {List(hashes)};\n{theme.Text(Source)}"));

    static string List(IReadOnlyDictionary<string, byte[]> hashes)
    {
        var files = hashes.OrderBy(h => h.Key, StringComparer.Ordinal).ToList();
        var all = SHA256.HashData([.. files.SelectMany(f => Encoding.UTF8.GetBytes(f.Key).Concat(f.Value))]);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("version", Short(all));
            json.WriteStartArray("essentials");
            foreach (var (address, _) in files.Where(f => IsEssential(f.Key))) json.WriteStringValue(address);
            json.WriteEndArray();
            json.WriteStartObject("files");
            foreach (var (address, hash) in files) json.WriteString(address, Short(hash));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    static bool IsEssential(string address) => EssentialPages.Contains(address) || address.StartsWith("assets/", StringComparison.Ordinal);

    static string Short(byte[] hash) => Convert.ToHexStringLower(hash.AsSpan(..8));
}
