using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>A check with one certain outcome for each cause.</summary>
/// <param name="Id">The check.</param>
/// <param name="Effort">Without preparations.</param>
/// <param name="Outcomes">By cause, in the problem's order: the outcome it shows.</param>
/// <param name="Setups">Preparations it needs, each made once on a path.</param>
/// <param name="Tools">Tools it needs.</param>
public sealed record SplitCheck(
    string Id,
    Effort Effort,
    ImmutableArray<string> Outcomes,
    ImmutableArray<string> Setups,
    ImmutableArray<string> Tools) : IToolUser;

/// <summary>
/// Which check to do first, and which next after each outcome, so that the cause is known at least cost. One cause is
/// present. A cause that alone is left is taken to be it, without a check of its own; causes that no check tells
/// apart end together.
/// </summary>
/// <param name="Causes">Probabilities; scaled to sum to 1.</param>
/// <param name="Checks">The checks.</param>
/// <param name="Setups">What the preparations take.</param>
/// <param name="Scale">What is made small.</param>
public sealed record SplitProblem(
    ImmutableArray<WeightedCause> Causes,
    ImmutableArray<SplitCheck> Checks,
    ImmutableArray<Setup> Setups,
    CostScale Scale);

public enum SplitMethod
{
    /// <summary>The cheapest plan there is.</summary>
    Exact,

    /// <summary>Not proved best: at each step the most information per cost.</summary>
    Greedy,

    /// <summary>Not proved best: the best few of these tried, each followed by greedy to the end.</summary>
    LookAhead,
}

public abstract record PlanNode;

/// <param name="Check">What to do.</param>
/// <param name="Next">By outcome, those that can occur.</param>
public sealed record PlanStep(string Check, ImmutableArray<PlanBranch> Next) : PlanNode;

public sealed record PlanBranch(string Outcome, PlanNode Node);

/// <summary>One cause, or several that the checks cannot tell apart; by id.</summary>
public sealed record PlanLeaf(ImmutableArray<string> Causes) : PlanNode;

/// <param name="Root">The plan.</param>
/// <param name="Cost">Expected, on the problem's scale.</param>
/// <param name="Expected">Expected minutes and money.</param>
/// <param name="Worst">The most minutes and the most money of any path; they may belong to different paths.</param>
/// <param name="Method">How it was found.</param>
/// <param name="Inseparable">Groups of causes that no check tells apart.</param>
public sealed record SplitPlan(
    PlanNode Root,
    double Cost,
    Effort Expected,
    Effort Worst,
    SplitMethod Method,
    ImmutableArray<ImmutableArray<string>> Inseparable);
