using System.Collections.Immutable;
using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Rendering;

/// <summary>The look of one guide: the built-in theme in the guide's language, with the guide's own pieces in their places.</summary>
/// <param name="Findings">What is wrong with the guide's own pieces; a broken one leaves the built-in one in its place.</param>
public sealed partial record GuideTheme(Theme Theme, ImmutableArray<Finding> Findings)
{
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);

    public static GuideTheme Of(ThemeFiles builtIn, GuideContent guide)
    {
        var findings = new FindingList();
        var words = WordLayers.Of(builtIn, guide, findings);
        var own = guide.ThemePieces.Where(p => !p.Key.StartsWith("words/", StringComparison.Ordinal)).ToImmutableSortedDictionary(StringComparer.Ordinal);
        foreach (var (path, text) in own.Where(p => p.Key.StartsWith("templates/", StringComparison.Ordinal)))
        {
            if (Theme.Objection(text) is not { } objection) continue;
            findings.Add(objection);
            own = own.Remove(path);
        }

        var theme = new Theme(builtIn.With(own), words);
        findings.AddRange(UnknownAssets(theme));
        return new GuideTheme(theme, findings.ToSorted());
    }

    /// <summary>Of all that the look of a guide depends on.</summary>
    public static Digest BasisOf(GuideContent guide)
    {
        using var all = new Digester();
        // The settings say the language, and a finding about it points into them.
        all.Add(guide.Settings.Language.Value).Add(guide.Settings.Language.Span.Source.Text);
        foreach (var (path, text) in guide.ThemePieces) all.Add(path).Add(text.Text);
        return all.Take();
    }

    static IEnumerable<Finding> UnknownAssets(Theme theme) =>
        from piece in theme.Files.Pieces
        where piece.Key.StartsWith("templates/", StringComparison.Ordinal)
        from Match match in Asset().Matches(piece.Value.Text)
        where !theme.Assets.Names.Contains(match.Groups[1].Value)
        select Rules.ThemeAsset.At(piece.Value.Span(match.Groups[1].Index, match.Groups[1].Length), match.Groups[1].Value, NearestName.Question(match.Groups[1].Value, theme.Assets.Names));

    [GeneratedRegex("(?<=[\"} ]assets/)([A-Za-z0-9._-]+)(?=\")", RegexOptions.CultureInvariant)]
    private static partial Regex Asset();
}
