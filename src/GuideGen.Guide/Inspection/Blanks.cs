using System.Collections.Immutable;
using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Places in a drafted page that its author has still to fill.</summary>
public static partial class Blanks
{
    /// <summary>Four underscores; more of them are a blank as well.</summary>
    public const string Marker = "____";

    internal static IEnumerable<Finding> In(SourceText source) =>
        Written().Matches(source.Text).Where(m => !IsComment(source, m.Index)).Select(m => (m.Index, m.Length)).Concat(HelpLeft(source))
            .Select(p => Rules.BlankLeft.At(source.Span(p.Index, p.Length)));

    /// <summary>How many places are to be filled.</summary>
    public static int CountIn(SourceText source) => In(source).Count();

    /// <summary>What a draft says to its author is no text for a reader. Beside a marker it is the same blank.</summary>
    static IEnumerable<(int Index, int Length)> HelpLeft(SourceText source) =>
        Helps.Select(h => (Index: source.Text.IndexOf(h, StringComparison.Ordinal), h.Length))
            .Where(p => p.Index >= 0 && !source.Text.AsSpan(0, p.Index).TrimEnd().EndsWith(Marker));

    static readonly ImmutableArray<string> Helps = [.. Enum.GetValues<ContentKind>().SelectMany(k => SectionPlan.Of(k)).Select(s => s.Help).Distinct()];

    /// <summary>A key behind a # is one that its author has not taken.</summary>
    static bool IsComment(SourceText source, int index)
    {
        var text = source.Text;
        var lineStart = index == 0 ? 0 : text.LastIndexOf('\n', index - 1) + 1;
        return text.AsSpan(lineStart, index - lineStart).TrimStart().StartsWith("#") && index < EndOfStructure(source);
    }

    static int EndOfStructure(SourceText source)
    {
        if (!source.Path.EndsWith(".md", StringComparison.Ordinal)) return source.Text.Length;
        return source.Text.StartsWith("---", StringComparison.Ordinal) ? source.Text.IndexOf("\n---", StringComparison.Ordinal) : 0;
    }

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
