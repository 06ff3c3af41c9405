using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>Findings that speak together: one alone, or the members of a group.</summary>
/// <param name="Members">In the order of the group.</param>
/// <param name="Group">Null for one alone.</param>
internal sealed record SignUnit(ImmutableArray<Finding> Members, FindingGroup? Group)
{
    /// <summary>All of a model: first the findings that are in no group, then the groups.</summary>
    public static ImmutableArray<SignUnit> Of(RankingModel model)
    {
        HashSet<string> grouped = [.. model.Groups.SelectMany(g => g.Members)];
        Dictionary<string, Finding> findings = model.Findings.Where(f => grouped.Contains(f.Id)).ToDictionary(f => f.Id, StringComparer.Ordinal);
        return
        [
            .. model.Findings.Where(f => !grouped.Contains(f.Id)).Select(f => new SignUnit([f], null)),
            .. model.Groups.Select(g => new SignUnit([.. g.Members.Select(m => findings[m])], g)),
        ];
    }
}
