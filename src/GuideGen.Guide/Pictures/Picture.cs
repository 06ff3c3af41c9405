using System.Security.Cryptography;

namespace GuideGen.Guide.Pictures;

/// <summary>A picture of the guide, as large as it is shown: turned the right way, in pixels; 0 where a drawing does not say.</summary>
/// <param name="IsDrawing">True for SVG, which has any size and is copied as it is.</param>
public sealed record Picture(int Width, int Height, bool IsDrawing)
{
    /// <summary>SHA-256 of the file that was inspected, in hexadecimal: what is written has to be that file.</summary>
    public string Digest { get; init; } = "";

    public static string DigestOf(byte[] file) => Convert.ToHexStringLower(SHA256.HashData(file));
}

/// <summary>What the head of a photo file says.</summary>
/// <param name="Turn">EXIF orientation, 1 to 8; 1 is upright.</param>
/// <param name="HasPosition">True if it says where it was taken.</param>
readonly record struct PhotoHead(int Width, int Height, int Turn = 1, bool HasPosition = false)
{
    /// <summary>Orientations from 5 on lie on their side.</summary>
    public Picture Upright => Turn >= 5 ? new Picture(Height, Width, IsDrawing: false) : new Picture(Width, Height, IsDrawing: false);
}
