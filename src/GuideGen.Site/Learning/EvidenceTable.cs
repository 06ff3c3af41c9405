using System.Collections.Immutable;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Learning;

/// <summary>One table of what the guide knows or lacks.</summary>
/// <param name="Id">Stable, for programs.</param>
/// <param name="Title">For people.</param>
/// <param name="Columns">Stable names, which are also the headings.</param>
/// <param name="Rows">Text, whole and other numbers, or null where there is nothing; as many in each row as there are columns.</param>
public sealed record EvidenceTable(string Id, string Title, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<object?>> Rows)
{
    internal static EvidenceTable Of(string id, string title, string columns, IEnumerable<ImmutableArray<object?>> rows) =>
        new(id, title, [.. columns.Split(", ")], [.. rows]);
}

/// <summary>When a review counts as old.</summary>
/// <param name="Today">What day it is.</param>
/// <param name="Months">After so many months a page wants to be read again.</param>
public readonly record struct ReviewAge(DateOnly Today, int Months)
{
    public bool IsStale(DateOnly reviewed) => reviewed.AddMonths(Months) < Today;
}

/// <summary>Everything that the cases say, and what the guide should learn next.</summary>
public static class EvidenceTables
{
    public static ImmutableArray<EvidenceTable> Of(SitePlan plan, ReviewAge age) =>
    [
        .. SignTables.Of(plan),
        .. LearningTables.Of(plan),
        .. GapTables.Of(plan, age),
        .. ContradictionTables.Of(plan),
    ];
}
