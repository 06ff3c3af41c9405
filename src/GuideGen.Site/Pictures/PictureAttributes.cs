using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Guide.Pictures;
using Markdig.Renderers.Html;
using Markdig.Syntax.Inlines;

namespace GuideGen.Site.Pictures;

/// <summary>What the element of a picture says, so that a page keeps its place for it and a phone loads a small one.</summary>
static class PictureAttributes
{
    /// <summary>A picture fills the column of text, which is never wider than this.</summary>
    const string Shown = "(min-width: 46rem) 42rem, 94vw";

    public static void AddTo(LinkInline image, (Picture Picture, ImmutableArray<(string Address, PhotoSize Size)> Sizes)? known)
    {
        var attributes = image.GetAttributes();
        attributes.AddPropertyIfNotExist("loading", "lazy");
        if (known is not var (picture, sizes)) return;
        var (width, height) = sizes is [.., var last] ? (last.Size.Width, last.Size.Height) : (picture.Width, picture.Height);
        if (width > 0 && height > 0)
        {
            attributes.AddPropertyIfNotExist("width", width.ToString(CultureInfo.InvariantCulture));
            attributes.AddPropertyIfNotExist("height", height.ToString(CultureInfo.InvariantCulture));
        }

        if (sizes.Length < 2) return;
        attributes.AddPropertyIfNotExist("srcset", string.Join(", ", sizes.Select(s => $"{s.Address} {s.Size.Width.ToString(CultureInfo.InvariantCulture)}w")));
        attributes.AddPropertyIfNotExist("sizes", Shown);
    }
}
