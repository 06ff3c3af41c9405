using GuideGen.Guide.Findings;
using GuideGen.Guide.Links;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pictures;
using GuideGen.Guide.Text;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Pictures;

/// <summary>The pictures of a guide as files of its site: drawings as they are, photos drawn anew in a few sizes.</summary>
static class PictureFiles
{
    /// <remarks>Reading one of the files throws a <see cref="PictureException"/> if the picture is broken or not the one that was inspected.</remarks>
    public static IEnumerable<SiteFile> Of(GuideContent guide, IGuideFiles files) => guide.Assets.SelectMany(asset =>
    {
        var path = LinkTable.PathOfAsset(asset);
        var basis = guide.Pictures.TryGetValue(asset, out var picture) ? BasisOf(picture) : null;
        var sizes = PhotoSizes.Of(guide, asset);
        return sizes.IsEmpty
            ? [new SiteFile(asset, Read) { Basis = basis }]
            : sizes.Select(size => new SiteFile(size.Address, () => PhotoWriter.Draw(Read(), size) ?? throw At(Rules.ImageBroken)) { Basis = basis });

        byte[] Read()
        {
            if (!files.TryRead(path, out var bytes, out var why)) throw At(Rules.FileUnreadable, why);
            return Picture.DigestOf(bytes) == guide.Pictures[asset].Digest ? bytes : throw At(Rules.FileChanged);
        }

        PictureException At(Rule rule, params string[] facts) => new(rule.At(new SourceText(path, "").Top, facts));
    });

    /// <summary>The size is in the address.</summary>
    static FileBasis BasisOf(Picture picture)
    {
        using var all = new Digester();
        return new FileBasis(all.Add(ThisTool.Digest).Add(picture.Digest).Take());
    }
}
