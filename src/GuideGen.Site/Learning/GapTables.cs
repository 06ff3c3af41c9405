using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Learning;

/// <summary>What is missing, old or replaced.</summary>
static class GapTables
{
    public static IEnumerable<EvidenceTable> Of(SitePlan plan, ReviewAge age) =>
    [
        CodesWithoutFault(plan), FaultsWithoutCases(plan), FaultsWithoutCheck(plan.Guide), Stale(plan.Guide, age), Superseded(plan.Guide),
    ];

    static EvidenceTable CodesWithoutFault(SitePlan plan)
    {
        var explained = plan.Guide.Faults.All.SelectMany(f => f.Codes.Select(c => c.Key.Value)).ToHashSet();
        return EvidenceTable.Of(
            "codes-without-fault",
            "Codes that cases show and no fault sets",
            "code, cases, found",
            plan.Guide.Cases.SelectMany(c => c.Codes.Select(k => (Code: k.Key.Value, c.Found.Value)))
                .Where(c => !explained.Contains(c.Code))
                .GroupBy(c => c.Code).OrderBy(g => g.Key)
                .Select(g => (ImmutableArray<object?>)[g.Key.ToString(), g.Count(), string.Join(' ', g.Select(c => c.Value).Distinct().Order(StringComparer.Ordinal))]));
    }

    static EvidenceTable FaultsWithoutCases(SitePlan plan) => EvidenceTable.Of(
        "faults-without-cases",
        "Faults without a counted case, the likeliest by the author first",
        "fault, estimate, other cases",
        plan.Guide.Faults.All.Select(f => (Fault: f, Levels: plan.Evidence.Of(f).ByLevel))
            .Where(f => f.Levels[3] + f.Levels[4] == 0)
            .OrderByDescending(f => f.Fault.Belief.Value).ThenBy(f => f.Fault.Origin.Slug, StringComparer.Ordinal)
            .Select(f => (ImmutableArray<object?>)[f.Fault.Origin.Slug, f.Fault.Belief.Value, f.Levels.Sum()]));

    static EvidenceTable FaultsWithoutCheck(GuideContent guide)
    {
        var pointed = guide.Checks.All.SelectMany(c => c.Outcomes).SelectMany(o => o.Value.PointsTo).Select(f => f.Value).ToHashSet(StringComparer.Ordinal);
        return EvidenceTable.Of(
            "faults-without-check",
            "Faults that no check confirms, or to which no outcome of a check points",
            "fault, checks, pointed to",
            guide.Faults.All.Where(f => f.Checks.IsEmpty || !pointed.Contains(f.Origin.Slug))
                .Select(f => (ImmutableArray<object?>)[f.Origin.Slug, f.Checks.Length, pointed.Contains(f.Origin.Slug) ? "yes" : "no"]));
    }

    static EvidenceTable Stale(GuideContent guide, ReviewAge age) => EvidenceTable.Of(
        "stale-reviews",
        string.Create(CultureInfo.InvariantCulture, $"Pages not read through for {age.Months} months before {age.Today:yyyy-MM-dd}, or never"),
        "page, reviewed",
        Reviews(guide).Where(r => r.Reviewed is not { } day || age.IsStale(day))
            .OrderBy(r => r.Reviewed ?? DateOnly.MinValue).ThenBy(r => r.Path, StringComparer.Ordinal)
            .Select(r => (ImmutableArray<object?>)[r.Path, r.Reviewed?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)]));

    /// <summary>Of the pages on which somebody may be hurt or misled: faults and checks.</summary>
    static IEnumerable<(string Path, DateOnly? Reviewed)> Reviews(GuideContent guide) =>
    [
        .. guide.Faults.All.Select(f => (f.Origin.Source.Path, f.Provenance.Reviewed?.Value)),
        .. guide.Checks.All.Select(c => (c.Origin.Source.Path, c.Provenance.Reviewed?.Value)),
    ];

    static EvidenceTable Superseded(GuideContent guide)
    {
        var replaced = guide.Parts.All.Where(p => p.SupersededBy is not null).ToDictionary(p => p.Origin.Slug, p => p.SupersededBy!.Value.Value);
        return EvidenceTable.Of(
            "superseded-parts",
            "Parts that are superseded and still bought",
            "part, superseded by, page",
            from fault in guide.Faults.All
            from purchase in fault.Repair.Parts
            where purchase.Part is { } part && replaced.ContainsKey(part.Value)
            select (ImmutableArray<object?>)[purchase.Part!.Value.Value, replaced[purchase.Part!.Value.Value], fault.Origin.Source.Path]);
    }
}
