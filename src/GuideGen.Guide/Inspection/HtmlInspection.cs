using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Raw HTML keeps to the elements that the settings list, with attributes that cannot act.</summary>
sealed partial class HtmlInspection : IPageInspection
{
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide)
    {
        var allowed = guide.Settings.Html.Select(h => h.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return entry => entry.Origin.Body.Html.SelectMany(html => Inspect(html, allowed));
    }

    static IEnumerable<Finding> Inspect(Located<string> html, HashSet<string> allowed)
    {
        var hint = $"Allowed here: {string.Join(", ", allowed.Order(StringComparer.Ordinal))}.";
        foreach (Match mark in Mark().Matches(html.Value))
        {
            var span = html.Span.Source.Span(html.Span.Start + mark.Index, mark.Length);
            var name = mark.Groups["name"].Value;
            if (name.Length == 0) yield return Rules.HtmlRefused.At(span, "a declaration or a comment", hint).Concerning(mark.Value);
            else if (!allowed.Contains(name)) yield return Rules.HtmlRefused.At(span, $"the element '{name}'", hint).Concerning(name);
            var bad = Attribute().Matches(mark.Groups["rest"].Value).Select(a => a.Groups[1].Value).FirstOrDefault(a => !PlainHtml.Attributes.Contains(a.ToLowerInvariant()));
            if (bad is not null && allowed.Contains(name)) yield return Rules.HtmlRefused.At(span, $"the attribute '{bad}'", hint).Concerning(bad);
        }
    }

    // What a browser takes for a tag (HTML Living Standard 13.2.5.6): less-than, perhaps a slash, a letter; or a declaration.
    [GeneratedRegex("""</?(?<name>[A-Za-z][^\s/>]*)(?<rest>(?:"[^"]*"|'[^']*'|[^>"'])*)>?|<[!?]""", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Mark();

    [GeneratedRegex("""([^\s"'>/=]+)(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'>]+))?""", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Attribute();
}
