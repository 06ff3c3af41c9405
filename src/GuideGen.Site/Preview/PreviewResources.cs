using System.Collections.Frozen;

namespace GuideGen.Site.Preview;

/// <summary>The preview's own files, and what each kind of file is called on the wire.</summary>
static class PreviewResources
{
    static readonly FrozenDictionary<string, string> Types = new Dictionary<string, string>
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".json"] = "application/json",
        [".webmanifest"] = "application/manifest+json",
        [".xml"] = "application/xml",
        [".txt"] = "text/plain; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".jpg"] = "image/jpeg",
        [".jpeg"] = "image/jpeg",
        [".webp"] = "image/webp",
    }.ToFrozenDictionary();

    public static string TypeOf(string address) => Types.GetValueOrDefault(Path.GetExtension(address).ToLowerInvariant(), "application/octet-stream");

    public static byte[] Read(string name)
    {
        using var stream = typeof(PreviewResources).Assembly.GetManifestResourceStream("preview/" + name)!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
