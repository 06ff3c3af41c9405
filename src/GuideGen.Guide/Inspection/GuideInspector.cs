using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>The second stage: everything that is wrong with a guide. Nothing else decides that.</summary>
public static class GuideInspector
{
    // What takes longest begins first, so that nobody waits for it in the end.
    static readonly ImmutableArray<IInspection> AllButTrees =
    [
        new SimilarPagesInspection(),
        new PartSpellingInspection(),
        new NameInspection(),
        new CodeInspection(),
        new CodeMeaningInspection(),
        new CodeTextInspection(),
        new SectionInspection(),
        new SafetyInspection(),
        new HazardTextInspection(),
        new LinkInspection(),
        new SameSignalInspection(),
        new FormerAddressInspection(),
        new HtmlInspection(),
        new CaseDuplicateInspection(),
        new CaseAgainstFaultInspection(),
        new CasePrivacyInspection(),
        new CaseLevelInspection(),
        new PartCircleInspection(),
    ];

    /// <summary>What has more to look at once the tool has built the trees that it is to build.</summary>
    static readonly ImmutableArray<IInspection> OfTrees =
    [
        new TreeInspection(),
        new TreeAnswersInspection(),
        new TreeLeavesInspection(),
        new TreeOrderInspection(),
        new JoinedTreesInspection(),
    ];

    /// <returns>What was found while loading and inspecting, without what authors dismissed, in the order of a reader.</returns>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with.</param>
    public static ImmutableArray<Finding> Inspect(LoadedGuide loaded, DateOnly? today = null) => WithTrees(loaded, InspectAllButTrees(loaded.Guide, today));

    /// <summary>The part of an inspection that stays true when the tool builds trees.</summary>
    public static ImmutableArray<Finding> InspectAllButTrees(GuideContent guide, DateOnly? today) =>
        Run(AllButTrees.AddRange(new CaseDateInspection(today), new ReviewInspection(today)), guide);

    /// <summary>The whole inspection.</summary>
    /// <param name="apartFromTrees">From <see cref="InspectAllButTrees"/>, of the same guide with or without the built trees.</param>
    public static ImmutableArray<Finding> WithTrees(LoadedGuide loaded, ImmutableArray<Finding> apartFromTrees)
    {
        var found = apartFromTrees.AddRange(Run(OfTrees, loaded.Guide));
        return FindingList.Sort(Weighting.Apply(loaded.Guide, Blanks.Apply(WithoutHearsay([.. loaded.Findings, .. Dismissing.Apply(loaded.Guide, found)]))));
    }

    static ImmutableArray<Finding> Run(ImmutableArray<IInspection> inspections, GuideContent guide) =>
        [.. SideBySide.Map(inspections, i => i.Inspect(guide).ToList()).SelectMany(f => f)];

    /// <summary>
    /// What compares a page with another one says nothing while one of them has errors: once they are mended, it may
    /// be gone. No error gets lost by it, since the page that it rests on has one of its own.
    /// </summary>
    static IReadOnlyCollection<Finding> WithoutHearsay(IReadOnlyCollection<Finding> findings)
    {
        var broken = findings.Where(f => f.Severity is Severity.Error && f.RestsOn.IsEmpty).Select(f => f.Span.Path).ToHashSet(StringComparer.Ordinal);
        return broken.Count == 0 ? findings : [.. findings.Where(f => !f.RestsOn.Any(broken.Contains))];
    }
}
