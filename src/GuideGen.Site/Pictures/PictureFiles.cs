using GuideGen.Guide.Links;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Pictures;

/// <summary>The pictures of a guide as files of its site: drawings as they are, photos drawn anew in a few sizes.</summary>
static class PictureFiles
{
    public static IEnumerable<SiteFile> Of(GuideContent guide, IGuideFiles files) => guide.Assets.SelectMany(asset =>
    {
        var path = LinkTable.PathOfAsset(asset);
        var sizes = PhotoSizes.Of(guide, asset);
        return sizes.IsEmpty
            ? [new SiteFile(asset, () => Read(files, path))]
            : sizes.Select(size => new SiteFile(size.Address, () => PhotoWriter.Draw(Read(files, path), size)));
    });

    static byte[] Read(IGuideFiles files, string path) =>
        files.TryRead(path, out var bytes, out var why) ? bytes : throw new IOException($"{path} cannot be read: {why}");
}
