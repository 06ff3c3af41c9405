using GuideGen.Codes;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Loading;

/// <summary>The form of file names: they become addresses, so they stay plain everywhere.</summary>
public static class SlugForm
{
    public static bool IsGood(ContentKind kind, string slug) =>
        kind is ContentKind.Code ? TroubleCode.TryParse(slug, out var code) && code.ToString() == slug && !code.IsEmptySlot : IsPlain(slug);

    /// <summary><see cref="IsPlain"/> as a JSON Schema.</summary>
    internal static string Constraint { get; } =
        $$"""{ "type": "string", "maxLength": {{GuideLimits.SlugLength}}, "pattern": "^(?!(con|prn|aux|nul|com[0-9]|lpt[0-9])$)[a-z0-9]+(-[a-z0-9]+)*$" }""";

    public static bool IsPlain(string slug)
    {
        if (slug.Length is 0 or > GuideLimits.SlugLength) return false;
        var hasPlainEnds = slug[0] != '-' && slug[^1] != '-';
        return hasPlainEnds
            && !slug.Contains("--", StringComparison.Ordinal)
            && slug.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-')
            && !IsDeviceName(slug);
    }

    /// <summary>Some systems cannot hold a file of such a name, whatever its ending.</summary>
    static bool IsDeviceName(string slug) =>
        slug is "con" or "prn" or "aux" or "nul" || (slug.Length == 4 && slug[..3] is "com" or "lpt" && char.IsAsciiDigit(slug[3]));
}
