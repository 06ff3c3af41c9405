using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pictures;

/// <summary>Tells what each picture is, and refuses what a browser should not be given.</summary>
static class PictureReader
{
    const int Mebibyte = 1 << 20;

    /// <param name="path">Relative to the guide's folder.</param>
    /// <returns>Null if it cannot be used; the findings then say why.</returns>
    public static Picture? Read(IGuideFiles files, string path, FindingList findings)
    {
        var nothing = new SourceText(path, "");
        var ending = Path.GetExtension(path).ToLowerInvariant();
        if (ending is not (".svg" or ".png" or ".jpg" or ".jpeg" or ".webp")) return Refuse(Rules.ImageKind, ending);
        if (!files.TryRead(path, out var bytes, out var why)) return Refuse(Rules.FileUnreadable, why);
        if (bytes.Length > GuideLimits.PictureMebibytes * Mebibyte) return Refuse(Rules.ImageLarge, $"{bytes.Length / Mebibyte} MiB", $"{GuideLimits.PictureMebibytes} MiB");
        return (ending == ".svg" ? Drawing() : Photo()) is { } picture ? picture with { Digest = Picture.DigestOf(bytes) } : null;

        Picture? Drawing() => SourceDecoder.TryDecode(bytes, out var text)
            ? DrawingReader.Read(new SourceText(path, text), findings)
            : Refuse(Rules.ImageUnreadable);

        Picture? Photo()
        {
            if (PhotoHeadReader.Read(bytes) is not { } head) return Refuse(Rules.ImageUnreadable);
            var megapixels = (long)head.Width * head.Height / 1_000_000;
            if (megapixels > GuideLimits.PictureMegapixels) return Refuse(Rules.ImageLarge, $"{megapixels} megapixels", $"{GuideLimits.PictureMegapixels} megapixels");
            if (head.HasPosition) findings.Add(Rules.ImagePosition.At(nothing.Top));
            return head.Upright;
        }

        Picture? Refuse(Rule rule, params string[] facts)
        {
            findings.Add(rule.At(nothing.Top, facts));
            return null;
        }
    }
}
