using System.Text;
using GuideGen.Guide.Loading;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>A guide with some of its files changed, in memory.</summary>
sealed class Overlay(IGuideFiles guide) : IGuideFiles
{
    readonly SortedDictionary<string, byte[]> own = new(StringComparer.Ordinal);

    public IReadOnlyList<string> Paths => [.. guide.Paths.Union(own.Keys).Order(StringComparer.Ordinal)];

    public bool TryRead(string path, out byte[] bytes, out string why)
    {
        why = "";
        return own.TryGetValue(path, out bytes!) || guide.TryRead(path, out bytes, out why);
    }

    public Overlay Put(string path, byte[] bytes)
    {
        own[path] = bytes;
        return this;
    }

    public Overlay Put(string path, string text) => Put(path, Encoding.UTF8.GetBytes(text));

    public Overlay Append(string path, string text) => Put(path, TextOf(path) + text);

    /// <summary>Puts a text in the place of the first one of its kind, which has to be there.</summary>
    public Overlay Replace(string path, string old, string @new)
    {
        var text = TextOf(path);
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{path} has no '{old}'");
        return Put(path, text[..at] + @new + text[(at + old.Length)..]);
    }

    string TextOf(string path) => TryRead(path, out var bytes, out var why) ? Encoding.UTF8.GetString(bytes) : throw new InvalidOperationException(why);
}
