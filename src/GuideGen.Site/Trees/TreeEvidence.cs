using System.Collections.Immutable;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Diagnosis.Trees;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Trees;

/// <summary>What a tree costs one variant, and how it could cost less.</summary>
/// <param name="Variant">Slug of the variant.</param>
/// <param name="Written">As it stands, joined trees included.</param>
/// <param name="Best">The cheapest that was found.</param>
/// <param name="How">How it was found.</param>
/// <param name="Move">The exchange of two checks that saves most; null where none does.</param>
/// <param name="Stopping">The plan for checks that can err.</param>
public sealed record TreeEvidence(string Variant, TreeCost Written, TreeCost Best, BestOrder How, TreeExchange? Move, TreeStopping Stopping);

/// <summary>How long to go on with the checks of a tree, without those of joined ones, if their outcomes can be wrong as often as the checks state.</summary>
/// <param name="Plan">Of least expected minutes, those of wrong repairs included.</param>
/// <param name="WrongRepair">What a wrong repair was counted as, in minutes.</param>
public sealed record TreeStopping(StoppingPlan Plan, double WrongRepair);

/// <param name="Check">Slug of the check that goes forward.</param>
/// <param name="Before">Slug of the check that it comes before.</param>
/// <param name="Minutes">What that saves on average.</param>
public sealed record TreeExchange(string Check, string Before, double Minutes);

public enum BestOrder
{
    /// <summary>Nothing cheaper was found.</summary>
    AsWritten,

    /// <summary>The same steps with checks exchanged.</summary>
    Moved,

    /// <summary>Built anew from its checks; exact.</summary>
    Exact,

    /// <summary>Built anew from its checks; not proved to be the cheapest.</summary>
    Greedy,
}

/// <summary>Trees in numbers, by variant.</summary>
public sealed class TreeEvidences(GuideContent guide, GuideWeights weights)
{
    // A tree that finds fewer causes is no better for being cheaper.
    const double LeastCoverage = 0.005;

    // What a wrong repair costs is money more than time, and one number has to hold both: 20 of the currency for an hour, as the
    // money on fault pages assumes. Common practice, no source.
    const double MinutesPerMoney = 60 / 20.0;

    readonly CostScale scale = CostScale.MinutesOnly;

    /// <summary>One row for each variant that the tree is about and that can have the symptom.</summary>
    public ImmutableArray<TreeEvidence> Of(Tree tree) => [.. VariantsOf(tree).Select(v => Of(tree, v)).OfType<TreeEvidence>()];

    /// <summary>What the tree costs as it stands, by variant.</summary>
    public ImmutableArray<(string Variant, TreeCost Cost)> CostsOf(Tree tree) =>
        [.. from v in VariantsOf(tree) let cost = Written(tree, v) where cost is not null select (v, cost)];

    IEnumerable<string> VariantsOf(Tree tree) =>
        guide.Vehicle.Variants.Select(v => v.Key.Value).Where(v => GuideWeights.Fits(tree, v) && weights.CausesOf(tree.Symptom.Value, v).Any(c => c.Id != WeightedCause.SomethingElse));

    TreeCost? Written(Tree tree, string variant, bool questionsTakeTime = true) =>
        TreeCost.Of(new JoinedTree(guide, weights, variant) { QuestionsTakeTime = questionsTakeTime }.Of(tree), weights.CausesOf(tree.Symptom.Value, variant), out _);

    TreeEvidence? Of(Tree tree, string variant)
    {
        var causes = weights.CausesOf(tree.Symptom.Value, variant);
        var walk = new JoinedTree(guide, weights, variant).Of(tree);
        if (TreeCost.Of(walk, causes, out _) is not { } written) return null;
        var own = OnlyOwn(walk, tree);
        var moves = TreeMoves.Series(walk, JoinedTree.CannotTell, (check, before) => own.Contains(check) && own.Contains(before) && IsAsSafe(walk, check, before), (causes, scale));
        List<(TreeCost Cost, BestOrder How)> options =
        [
            (written, BestOrder.AsWritten),
            .. moves.TakeLast(1).Select(m => (m.Cost, BestOrder.Moved)),
            .. Anew(tree, walk, variant).Where(a => a.Cost.Coverage >= written.Coverage - LeastCoverage).Select(a => (WithQuestions(a.Cost, tree, variant, written), a.How)),
        ];
        var (best, how) = options.MinBy(o => Math.Round(scale.Of(o.Cost.Expected), 6));
        var first = moves.FirstOrDefault();
        return new TreeEvidence(variant, written, best, how, first is null ? null : new TreeExchange(CheckOf(walk, first.Check), CheckOf(walk, first.Before), written.Expected.Minutes - first.Cost.Expected.Minutes), Stopping(walk.Nodes.Where(n => own.Contains(n.Id)), variant, causes));
    }

    /// <summary>
    /// A tree built anew asks no questions. Somebody asked them to rule danger out or to choose the variant, so that it is no saving to
    /// leave them out: their time counts in both.
    /// </summary>
    TreeCost WithQuestions(TreeCost anew, Tree tree, string variant, TreeCost written)
    {
        var checksAlone = Written(tree, variant, questionsTakeTime: false)!;
        return anew with
        {
            Expected = anew.Expected + new Effort(written.Expected.Minutes - checksAlone.Expected.Minutes),
            Worst = anew.Worst + new Effort(written.Worst.Minutes - checksAlone.Worst.Minutes),
        };
    }

    /// <param name="steps">Those of the tree itself: what a joined tree looks at is weighed there.</param>
    TreeStopping Stopping(IEnumerable<Diagnosis.Trees.TreeNode> steps, string variant, ImmutableArray<WeightedCause> causes)
    {
        var used = steps.OfType<TreeStep>().Select(s => s.Check).OfType<string>().Where(c => GuideWeights.Fits(guide.Checks.Find(c)!, variant)).ToHashSet();
        ImmutableArray<UncertainCheck> checks = [.. weights.Fitted.Checks.Where(c => used.Contains(c.Id)).Select(c => c with { Outcomes = [.. c.Outcomes.Select(o => For(o, causes))] })];
        var wrong = causes.Sum(c => c.Probability * RepairMinutes(c.Id)) / causes.Where(c => guide.Faults.Find(c.Id) is not null).Sum(c => c.Probability);
        return new TreeStopping(StoppingPlans.Best(new StoppingProblem(causes, checks, weights.Fitted.Setups, wrong, scale)), wrong);
    }

    Diagnosis.Outcome For(Diagnosis.Outcome outcome, ImmutableArray<WeightedCause> causes) => outcome with { Likelihoods = outcome.Likelihoods.For(causes.Select(c => weights.Places[c.Id])) };

    /// <summary>Own hours, parts and consumables of the repair; nothing for a cause that the guide does not know.</summary>
    double RepairMinutes(string fault)
    {
        if (guide.Faults.Find(fault)?.Repair is not { } repair) return 0;
        return (repair.OwnHours.Value * 60) + ((double)(repair.Materials.Low + repair.Materials.High) / 2 * MinutesPerMoney);
    }

    /// <summary>The tree that the tool would build from the checks that this one uses.</summary>
    IEnumerable<(TreeCost Cost, BestOrder How)> Anew(Tree tree, SymptomTree walk, string variant)
    {
        var used = walk.Nodes.OfType<TreeStep>().Select(s => s.Check).OfType<string>().Where(c => GuideWeights.Fits(guide.Checks.Find(c)!, variant)).Distinct().Order(StringComparer.Ordinal);
        if (tree.Computed is not null) yield break;
        var place = tree.Name.Span;
        var built = ComputedTrees.Build(guide, weights, tree with
        {
            Variants = [new(variant, place)],
            Computed = new ComputedOrder(place, [.. used.Select(c => new Guide.Text.Located<string>(c, place))], [], [], [], null, tree.Summary, new(DriveAdvice.StopNow, place)),
        });
        if (Written(built, variant) is { } cost) yield return (cost, built.Computed!.Method == "exact" ? BestOrder.Exact : BestOrder.Greedy);
    }

    static HashSet<string> OnlyOwn(SymptomTree walk, Tree tree) =>
        [.. walk.Nodes.Select(n => n.Id).Where(id => id.StartsWith(JoinedTree.NameOf(tree, ""), StringComparison.Ordinal))];

    bool IsAsSafe(SymptomTree walk, string check, string before) => !IsGrave(CheckOf(walk, check)) || IsGrave(CheckOf(walk, before));

    bool IsGrave(string slug)
    {
        var check = guide.Checks.Find(slug)!;
        return check.Hazards.Concat(check.Setup.SelectMany(s => guide.Vehicle.Setups.First(v => v.Key.Value == s.Value).Value.Hazards)).Any(h => guide.Hazards[h.Value].IsGrave);
    }

    static string CheckOf(SymptomTree walk, string node) => walk.Nodes.OfType<TreeStep>().First(n => n.Id == node).Check!;
}
