namespace GuideGen.Guide.Loading;

/// <summary>How large the files of a guide may be: far above any honest page.</summary>
public static class LoadLimits
{
    public const int TextBytes = 2 * 1024 * 1024;

    public const int PictureMebibytes = 20;

    public const int PictureMegapixels = 60;

    public const int SlugLength = 80;
}
