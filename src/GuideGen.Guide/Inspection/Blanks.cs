using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Places in a drafted page that its author has still to fill.</summary>
public static partial class Blanks
{
    /// <summary>Four underscores; more of them are a blank as well.</summary>
    public const string Marker = "____";

    internal static IEnumerable<Finding> In(SourceText source) =>
        Written().Matches(source.Text).Select(m => Rules.BlankLeft.At(source.Span(m.Index, m.Length)));

    /// <summary>Leaves out what was found only because a place is blank, such as that a blank is no number.</summary>
    internal static IEnumerable<Finding> Apply(IReadOnlyCollection<Finding> findings)
    {
        var blanks = findings.Where(f => f.Rule == Rules.BlankLeft).ToLookup(f => f.Span.Path, f => f.Span);
        return blanks.Count == 0 ? findings : findings.Where(f => f.Rule == Rules.BlankLeft || !blanks[f.Span.Path].Any(b => Touches(b, f.Span)));
    }

    static bool Touches(SourceSpan blank, SourceSpan place) => place.Start < blank.Start + blank.Length && blank.Start < place.Start + Math.Max(1, place.Length);

    [GeneratedRegex("_{4,}", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
