using SkiaSharp;

namespace GuideGen.Site.Tests.Pictures;

/// <summary>Photos made for a test: the left half red, the right half blue.</summary>
static class Photos
{
    public static byte[] Make(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.Blue);
            canvas.DrawRect(0, 0, width / 2f, height, new SKPaint { Color = SKColors.Red });
        }

        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    /// <summary>A JPEG photo as a phone writes it: EXIF data with an orientation and a position right behind its beginning.</summary>
    public static byte[] FromPhone(int width, int height, byte orientation)
    {
        byte[] tiff =
        [
            .. "MM\0*"u8, 0, 0, 0, 8, 0, 2,
            0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0,
            0x88, 0x25, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38,
            0, 0, 0, 0,
            .. "N 51 Wexcombe Hill"u8,
        ];
        var photo = Make(width, height, SKEncodedImageFormat.Jpeg);
        return [0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(tiff.Length + 8), .. "Exif\0\0"u8, .. tiff, .. photo[2..]];
    }
}
