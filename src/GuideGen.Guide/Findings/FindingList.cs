using System.Collections.Immutable;

namespace GuideGen.Guide.Findings;

/// <summary>Collects findings while a stage works; hands them out in the order of a reader: file, line, column, rule.</summary>
public sealed class FindingList
{
    readonly List<Finding> findings = [];

    public bool IsEmpty => Count == 0;

    public int Count => findings.Count;

    public void Add(Finding finding) => findings.Add(finding);

    public void AddRange(IEnumerable<Finding> more) => findings.AddRange(more);

    public ImmutableArray<Finding> ToSorted() => Sort(findings);

    public static ImmutableArray<Finding> Sort(IEnumerable<Finding> findings) =>
    [
        .. findings
            .OrderBy(f => f.Span.Path, StringComparer.Ordinal)
            .ThenBy(f => f.Span.Start)
            .ThenBy(f => f.Rule.Id, StringComparer.Ordinal)
            .ThenBy(f => f.Message, StringComparer.Ordinal),
    ];
}
