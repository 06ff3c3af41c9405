using System.Text.RegularExpressions;

namespace GuideGen.Guide.Pages;

/// <summary>Looks at the lines of a page for what costs a Markdown reader more than their length is worth.</summary>
static partial class PageScan
{
    /// <summary>
    /// Counts what takes a paragraph back after it was read: the names of addresses, and underlines that make it a heading. The
    /// Markdown reader looks for its place among all blocks each time.
    /// </summary>
    public static MarkExcess? DefinitionsOf(ReadOnlySpan<char> markdown)
    {
        var count = 0;
        foreach (var match in Backwards().EnumerateMatches(markdown))
        {
            if (++count > GuideLimits.DefinitionsInPage) return new MarkExcess(match.Index, $"{GuideLimits.DefinitionsInPage} underlined headings and named addresses in one page");
        }

        return null;
    }

    /// <returns>Where the first line begins that lies too deep; -1 if none does.</returns>
    public static int TooDeep(ReadOnlySpan<char> markdown)
    {
        var found = Indented().EnumerateMatches(markdown);
        return found.MoveNext() ? found.Current.Index : -1;
    }

    // The number is that of GuideLimits.Indent.
    [GeneratedRegex(@"(?:^|\r)[ \t>]{201,}[^ \t>\r\n]", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Indented();

    [GeneratedRegex(@"\]:|(?:^|\r)[ \t>]*(-+|=+)[ \t]*(?=\r|$)", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Backwards();
}
