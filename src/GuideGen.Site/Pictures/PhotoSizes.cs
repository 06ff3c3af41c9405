using System.Collections.Immutable;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Pictures;

/// <summary>One size in which a photo goes onto the site.</summary>
/// <param name="Address">Relative to the site's root, not escaped.</param>
readonly record struct PhotoSize(string Address, int Width, int Height);

/// <summary>Which sizes of a photo there are: as large as a page shows it on a fine screen, and smaller ones for phones.</summary>
static class PhotoSizes
{
    const int Largest = 1600;

    static readonly int[] Smaller = [480, 960];

    /// <param name="asset">Relative to content/.</param>
    /// <returns>From small to large; the last one bears the photo's own name. None for a drawing.</returns>
    public static ImmutableArray<PhotoSize> Of(GuideContent guide, string asset)
    {
        if (!guide.Pictures.TryGetValue(asset, out var picture) || picture.IsDrawing) return [];
        var own = Math.Min(picture.Width, Largest);
        return
        [
            .. Smaller.Where(w => w < own).Select(w => Size(Named(asset, w), w)).Where(s => !guide.Assets.Contains(s.Address)),
            Size(asset, own),
        ];

        PhotoSize Size(string address, int width) =>
            new(address, width, Math.Max(1, (int)Math.Round(width * (double)picture.Height / picture.Width, MidpointRounding.AwayFromZero)));
    }

    static string Named(string asset, int width) => $"{asset[..^Path.GetExtension(asset).Length]}.{width}{Path.GetExtension(asset)}";
}
