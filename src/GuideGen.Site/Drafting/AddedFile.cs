using GuideGen.Guide.Loading;

namespace GuideGen.Site.Drafting;

/// <summary>A guide with one file more, which stands nowhere yet.</summary>
sealed class AddedFile(IGuideFiles guide, string added, byte[] content) : IGuideFiles
{
    public IReadOnlyList<string> Paths { get; } = [.. guide.Paths.Append(added).Order(StringComparer.Ordinal)];

    public bool TryRead(string path, out byte[] bytes, out string why)
    {
        if (path != added) return guide.TryRead(path, out bytes, out why);
        (bytes, why) = (content, "");
        return true;
    }
}
