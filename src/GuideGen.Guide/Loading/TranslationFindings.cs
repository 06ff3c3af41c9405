using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>Translations that no edition takes up.</summary>
static class TranslationFindings
{
    public static IEnumerable<Finding> Of(FileSorting sorting, SiteSettings settings)
    {
        var originals = sorting.Files.Union(FileSorting.SingleFiles);
        var languages = settings.AlsoIn.Select(l => l.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var translation in sorting.Translations)
        {
            var top = new SourceText(translation.Path, "").Top;
            if (!originals.Contains(translation.Of)) yield return Rules.TranslationAlone.At(top, translation.Of);
            if (!languages.Contains(translation.Language)) yield return Rules.TranslationUnlisted.At(top, translation.Language);
        }

        foreach (var twice in settings.AlsoIn.Prepend(settings.Language).GroupBy(l => l.Value, StringComparer.OrdinalIgnoreCase).SelectMany(g => g.Skip(1)))
        {
            yield return Rules.LanguageTwice.At(twice.Span, twice.Value);
        }
    }
}
