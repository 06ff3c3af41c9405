using System.Globalization;
using System.Text;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Drafting;

/// <summary>Makes the name of a file, and so an address, from what a page is called.</summary>
public static class DraftSlug
{
    /// <summary>Small letters, digits and single hyphens; accents are taken off. Not a good slug if the name has none of these.</summary>
    public static string Of(ContentKind kind, string name)
    {
        if (kind is ContentKind.Code) return name.Trim().ToUpperInvariant();
        var letters = name.Replace("ß", "ss", StringComparison.Ordinal).Normalize(NormalizationForm.FormD).Where(c => CharUnicodeInfo.GetUnicodeCategory(c) is not UnicodeCategory.NonSpacingMark);
        var plain = string.Concat(letters.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : c == '\'' ? '\0' : '-')).Replace("\0", "", StringComparison.Ordinal);
        return string.Join('-', plain.Split('-', StringSplitOptions.RemoveEmptyEntries));
    }
}
