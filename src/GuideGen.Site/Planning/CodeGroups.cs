using System.Collections.Immutable;
using GuideGen.Codes;

namespace GuideGen.Site.Planning;

/// <summary>A code as a row of its group: with a meaning of the standard, a page of this guide, or both.</summary>
public sealed record GroupRow(TroubleCode Code, CodeEntry? Entry, bool HasPage);

/// <summary>Codes that share their first three characters: the unit in which every standard code is listed.</summary>
/// <param name="Name">The three characters.</param>
public sealed record CodeGroup(string Name, ImmutableArray<GroupRow> Rows)
{
    public CodeArea Area => Rows[0].Code.Area;

    public static string NameOf(TroubleCode code) => code.ToString()[..3];

    /// <summary>Every group that has a standard code or a code of this guide, in order.</summary>
    public static ImmutableArray<CodeGroup> All(IEnumerable<TroubleCode> ofGuide)
    {
        var own = ofGuide.ToHashSet();
        var rows = CodeCatalogue.Standard.Select(e => new GroupRow(e.Code, e, own.Contains(e.Code)))
            .Concat(own.Where(c => CodeCatalogue.FindStandard(c) is null).Select(c => new GroupRow(c, null, HasPage: true)));
        return [.. rows.OrderBy(r => r.Code).GroupBy(r => NameOf(r.Code)).Select(g => new CodeGroup(g.Key, [.. g]))];
    }
}
