using System.Runtime.CompilerServices;
using GuideGen.Codes;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>Where a guide names codes: in front matter, trees, cases and running text.</summary>
public static class CodeUses
{
    /// <summary>Codes given as values: what faults set, what cases read, and the code pages themselves.</summary>
    public static IEnumerable<Located<TroubleCode>> InValues(GuideContent guide) =>
    [
        .. guide.Faults.All.SelectMany(f => f.Codes.Select(c => c.Key)),
        .. guide.Codes.All.Select(c => new Located<TroubleCode>(c.Code, c.Origin.Source.Top)),
        .. guide.Cases.SelectMany(c => c.Codes.Select(k => k.Key)),
    ];

    /// <summary>The sentences of an entry, apart from the body of a page, in which a code may stand.</summary>
    public static IEnumerable<Located<string>> Sentences(IGuideEntry entry) => entry switch
    {
        Tree tree => [tree.Name, tree.Summary, .. tree.Nodes.SelectMany(n => Sentences(n.Value))],
        Part part => [part.Name, part.Summary, part.Where],
        Check check => [check.Name, check.Summary, .. check.Outcomes.Select(o => o.Value.Name)],
        _ => [entry.Name, entry.Summary],
    };

    /// <summary>The same of terms and cases, which have no page of their own.</summary>
    public static IEnumerable<Located<string>> SentencesOutsidePages(GuideContent guide) =>
    [
        .. guide.Terms.Select(t => t.Value.Means),
        .. guide.Cases.SelectMany(c => Sentences(c)),
    ];

    // Weights, ranking and plan all ask, of the same guide; a guide never changes.
    static readonly ConditionalWeakTable<GuideContent, IReadOnlyList<TroubleCode>> Known = [];

    /// <summary>Every code a guide names anywhere, once, in their order.</summary>
    public static IReadOnlyList<TroubleCode> All(GuideContent guide) => Known.GetValue(guide, Find);

    static IReadOnlyList<TroubleCode> Find(GuideContent guide)
    {
        var values = InValues(guide).Select(c => c.Value);
        var sentences = guide.Entries.SelectMany(Sentences).Concat(SentencesOutsidePages(guide)).SelectMany(s => CodeText.In(s.Value)).Select(c => c.Code).OfType<TroubleCode>();
        var bodies = guide.Entries.SelectMany(e => e.Origin.Body.Codes);
        return [.. values.Concat(sentences).Concat(bodies).Where(c => !c.IsEmptySlot).Distinct().Order()];
    }

    static IEnumerable<Located<string>> Sentences(TreeNode node) => node switch
    {
        AskNode ask => [ask.Question, .. ask.Answers.Select(a => a.Key), .. ask.Why is { } why ? [why] : Array.Empty<Located<string>>()],
        AdviceNode advice => [advice.Advice],
        DoNode { Why: { } why } => [why],
        _ => [],
    };

    static IEnumerable<Located<string>> Sentences(SolvedCase solved) =>
    [
        .. solved.Work.Changed,
        .. solved.Work.Tried.Select(t => t.What),
        .. solved.Note is { } note ? [note] : Array.Empty<Located<string>>(),
    ];
}
