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

    /// <summary>The sentences of a guide, apart from the bodies of pages, in which a code may stand.</summary>
    public static IEnumerable<Located<string>> Sentences(GuideContent guide) =>
    [
        .. guide.Entries.SelectMany(e => new[] { e.Name, e.Summary }),
        .. guide.Trees.All.SelectMany(t => t.Nodes).SelectMany(n => Sentences(n.Value)),
        .. guide.Parts.All.Select(p => p.Where),
        .. guide.Terms.Select(t => t.Value.Means),
        .. guide.Checks.All.SelectMany(c => c.Outcomes).Select(o => o.Value.Name),
        .. guide.Cases.SelectMany(c => Sentences(c)),
    ];

    // Weights, ranking and plan all ask, of the same guide; a guide never changes.
    static readonly ConditionalWeakTable<GuideContent, IReadOnlyList<TroubleCode>> Known = [];

    /// <summary>Every code a guide names anywhere, once, in their order.</summary>
    public static IReadOnlyList<TroubleCode> All(GuideContent guide) => Known.GetValue(guide, Find);

    static IReadOnlyList<TroubleCode> Find(GuideContent guide)
    {
        var values = InValues(guide).Select(c => c.Value);
        var sentences = Sentences(guide).SelectMany(s => CodeText.In(s.Value)).Select(c => c.Code).OfType<TroubleCode>();
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
