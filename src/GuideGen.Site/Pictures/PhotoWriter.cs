using SkiaSharp;

namespace GuideGen.Site.Pictures;

/// <summary>
/// Draws a photo anew in the size that is asked for, upright, in sRGB. Nothing of the file but its picture comes through:
/// no position, no name of a device, no preview.
/// </summary>
static class PhotoWriter
{
    const int JpegQuality = 82;
    const int WebPQuality = 80;

    static readonly SKSamplingOptions Smooth = new(SKFilterMode.Linear, SKMipmapMode.Linear);

    /// <returns>Null if the file has the head of a photo, but not all of its picture.</returns>
    public static byte[]? Draw(byte[] photo, PhotoSize size)
    {
        using var data = SKData.CreateCopy(photo);
        using var codec = SKCodec.Create(data);
        if (codec is null) return null;
        using var decoded = new SKBitmap(new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(decoded.Info, decoded.GetPixels()) != SKCodecResult.Success) return null;
        using var surface = SKSurface.Create(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        using var image = SKImage.FromBitmap(decoded);
        var isTurned = codec.EncodedOrigin >= SKEncodedOrigin.LeftTop;
        var (width, height) = isTurned ? (image.Height, image.Width) : (image.Width, image.Height);
        surface.Canvas.Scale((float)size.Width / width, (float)size.Height / height);
        surface.Canvas.Concat(Upright(codec.EncodedOrigin, width, height));
        surface.Canvas.DrawImage(image, 0, 0, Smooth);
        using var drawn = surface.Snapshot();
        var (format, quality) = FormatOf(size.Address);
        using var encoded = drawn.Encode(format, quality);
        return encoded.ToArray();
    }

    static (SKEncodedImageFormat Format, int Quality) FormatOf(string address) => Path.GetExtension(address).ToLowerInvariant() switch
    {
        ".png" => (SKEncodedImageFormat.Png, 100),
        ".webp" => (SKEncodedImageFormat.Webp, WebPQuality),
        _ => (SKEncodedImageFormat.Jpeg, JpegQuality),
    };

    /// <summary>The eight ways a camera can be held (EXIF orientation, CIPA DC-008 4.6.4), turned back.</summary>
    /// <param name="w">Width of the upright picture.</param>
    /// <param name="h">Height of the upright picture.</param>
    static SKMatrix Upright(SKEncodedOrigin origin, float w, float h) => origin switch
    {
        SKEncodedOrigin.TopRight => Matrix(-1, 0, w, 0, 1, 0),
        SKEncodedOrigin.BottomRight => Matrix(-1, 0, w, 0, -1, h),
        SKEncodedOrigin.BottomLeft => Matrix(1, 0, 0, 0, -1, h),
        SKEncodedOrigin.LeftTop => Matrix(0, 1, 0, 1, 0, 0),
        SKEncodedOrigin.RightTop => Matrix(0, -1, w, 1, 0, 0),
        SKEncodedOrigin.RightBottom => Matrix(0, -1, w, -1, 0, h),
        SKEncodedOrigin.LeftBottom => Matrix(0, 1, 0, -1, 0, h),
        _ => SKMatrix.Identity,
    };

    static SKMatrix Matrix(float scaleX, float skewX, float moveX, float skewY, float scaleY, float moveY) =>
        new() { ScaleX = scaleX, SkewX = skewX, TransX = moveX, SkewY = skewY, ScaleY = scaleY, TransY = moveY, Persp2 = 1 };
}
