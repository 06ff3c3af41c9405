using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Keeping;
using GuideGen.Guide.Links;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>The second stage: everything that is wrong with a guide. Nothing else decides that.</summary>
public static class GuideInspector
{
    static readonly CodeTextInspection CodeText = new();

    static readonly ImmutableArray<IInspection> OfFrame =
    [
        new NameInspection(),
        new CodeInspection(),
        new CodeMeaningInspection(),
        new SameSignalInspection(),
        new FormerAddressInspection(),
        new CaseAgainstFaultInspection(),
        new PartCircleInspection(),
    ];

    /// <summary>What follows from the cases and from what is common to all files, whatever the pages say.</summary>
    static readonly ImmutableArray<IInspection> OfCases =
    [
        CodeText,
        new CaseDuplicateInspection(),
        new CasePrivacyInspection(),
        new CaseLevelInspection(),
    ];

    static readonly ImmutableArray<IPageInspection> OfPages =
    [
        new PartSpellingInspection(),
        CodeText,
        new SectionInspection(),
        new SafetyInspection(),
        new HazardTextInspection(),
        new LinkInspection(),
        new HtmlInspection(),
    ];

    /// <summary>What has more to look at once the tool has built the trees that it is to build.</summary>
    static readonly ImmutableArray<IInspection> OfTrees =
    [
        new TreeLeavesInspection(),
        new JoinedTreesInspection(),
    ];

    /// <summary>The same, as far as it follows from the trees, the checks and from what is common to all files.</summary>
    static readonly ImmutableArray<IInspection> OfSteps =
    [
        new TreeInspection(),
        new TreeAnswersInspection(),
        new TreeOrderInspection(),
    ];

    /// <returns>What was found while loading and inspecting, without what authors dismissed, in the order of a reader.</returns>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with.</param>
    /// <param name="memory">Of earlier inspections of the guide; null if it is inspected once.</param>
    public static ImmutableArray<Finding> Inspect(LoadedGuide loaded, DateOnly? today = null, GuideMemory? memory = null) =>
        WithTrees(loaded, InspectAllButTrees(loaded.Guide, today, memory), memory);

    /// <summary>The part of an inspection that stays true when the tool builds trees.</summary>
    /// <param name="memory">Of earlier inspections of the guide; null if it is inspected once.</param>
    public static ImmutableArray<Finding> InspectAllButTrees(GuideContent guide, DateOnly? today, GuideMemory? memory = null)
    {
        memory ??= GuideMemory.None;
        // What takes longest begins first, so that nobody waits for it in the end.
        ImmutableArray<Func<IEnumerable<Finding>>> parts = [() => SimilarPages.In(guide, memory), () => InspectPages(guide, memory), () => InspectFrame(guide, today, memory), () => InspectCases(guide, today, memory)];
        return [.. SideBySide.Map(parts, p => p()).SelectMany(f => f)];
    }

    /// <summary>The whole inspection.</summary>
    /// <param name="apartFromTrees">From <see cref="InspectAllButTrees"/>, of the same guide with or without the built trees.</param>
    /// <param name="memory">Of earlier inspections of the guide; null if it is inspected once.</param>
    public static ImmutableArray<Finding> WithTrees(LoadedGuide loaded, ImmutableArray<Finding> apartFromTrees, GuideMemory? memory = null)
    {
        var found = apartFromTrees.AddRange(Placed(InspectTrees(loaded.Guide, memory ?? GuideMemory.None), loaded.Guide));
        return FindingList.Sort(Weighting.Apply(loaded.Guide, Blanks.Apply(WithoutHearsay([.. loaded.Findings, .. Dismissing.Apply(loaded.Guide, found)]))));
    }

    static IEnumerable<Finding> InspectFrame(GuideContent guide, DateOnly? today, GuideMemory memory) =>
        Placed(memory.Recall($"rules on {today:O}", guide.Frame, () => Run([.. OfFrame, new ReviewInspection(today)], guide)), guide);

    static ImmutableArray<Finding> InspectCases(GuideContent guide, DateOnly? today, GuideMemory memory) =>
        memory.Recall($"rules of cases on {today:O}", BasisOfCases(guide), () => Run([.. OfCases, new CaseDateInspection(today)], guide));

    static IEnumerable<Finding> InspectPages(GuideContent guide, GuideMemory memory)
    {
        var looks = new Lazy<ImmutableArray<Func<IGuideEntry, IEnumerable<Finding>>>>(() => [.. OfPages.Select(i => i.For(guide))]);
        var basis = BasisOfPages(guide);
        return SideBySide.Map([.. guide.Entries], e => memory.Recall("rules", basis, e.Origin.Whole, () => Kept(e)))
            .SelectMany(f => f);

        ImmutableArray<Finding> Kept(IGuideEntry entry)
        {
            var (key, form) = (new KeptKey(KeptKind.Findings, basis, entry.Origin.Whole), new FindingsForm(entry.Origin.Source));
            if (memory.TryFind(key, form, out var findings)) return findings;
            findings = [.. looks.Value.SelectMany(look => look(entry))];
            if (form.Fits(findings)) memory.Keep(key, form, findings);
            return findings;
        }
    }

    /// <summary>
    /// Of all that the inspections of single pages look at apart from the page. It is less than the frame, so that a code more or a better
    /// summary on one page does not let all others be looked at again.
    /// </summary>
    internal static Digest BasisOfPages(GuideContent guide)
    {
        using var basis = new Digester();
        basis.Add(guide.Common);
        foreach (var entry in guide.Entries)
        {
            basis.Add(entry.Name.Value);
            foreach (var anchor in LinkTable.AnchorsOf(entry)) basis.Add(anchor);
        }

        foreach (var other in guide.Parts.All.SelectMany(p => p.Also)) basis.Add(other.Value);
        return basis.Take();
    }

    static ImmutableArray<Finding> InspectTrees(GuideContent guide, GuideMemory memory)
    {
        var isUnbuilt = guide.Trees.All.Any(t => t.IsUnbuilt);
        // What the tool builds follows from everything.
        var basis = guide.Trees.All.Any(t => t.Computed is not null) ? guide.Frame : BasisOfSteps(guide);
        ImmutableArray<Func<ImmutableArray<Finding>>> parts =
        [
            () => memory.Recall($"rules of steps {isUnbuilt}", basis, () => Run(OfSteps, guide)),
            () => memory.Recall($"rules of trees {isUnbuilt}", guide.Frame, () => Run(OfTrees, guide)),
        ];
        return [.. SideBySide.Map(parts, p => p()).SelectMany(f => f)];
    }

    static Digest BasisOfSteps(GuideContent guide)
    {
        using var basis = new Digester();
        basis.Add(guide.Common);
        foreach (var tree in guide.Trees.All) basis.Add(tree.Origin.Face);
        foreach (var check in guide.Checks.All) basis.Add(check.Origin.Face);
        return basis.Take();
    }

    static Digest BasisOfCases(GuideContent guide)
    {
        using var basis = new Digester();
        basis.Add(guide.Common);
        foreach (var solved in guide.Cases) basis.Add(solved.Origin.Whole);
        return basis.Take();
    }

    static ImmutableArray<Finding> Run(ImmutableArray<IInspection> inspections, GuideContent guide) =>
        [.. SideBySide.Map(inspections, i => i.Inspect(guide).ToList()).SelectMany(f => f)];

    /// <summary>Findings that may be older than the text of their pages, in that text: what stands before it is the same.</summary>
    static IEnumerable<Finding> Placed(ImmutableArray<Finding> findings, GuideContent guide)
    {
        if (findings.IsEmpty) return findings;
        var sources = guide.Entries.Select(e => e.Origin.Source).DistinctBy(s => s.Path).ToDictionary(s => s.Path);
        return findings.Select(f => sources.TryGetValue(f.Span.Path, out var source) ? f with { Span = f.Span with { Source = source } } : f);
    }

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
