using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>A check that tells whether one cause is there.</summary>
/// <param name="Id">The check.</param>
/// <param name="Probability">Of its cause.</param>
/// <param name="Effort">Without preparations.</param>
/// <param name="Setups">Preparations it needs, each made once.</param>
/// <param name="Tools">Tools it needs.</param>
public sealed record CauseCheck(
    string Id, double Probability, Effort Effort, ImmutableArray<string> Setups, ImmutableArray<string> Tools)
    : IToolUser;

/// <summary>When checking ends; the best order depends on it.</summary>
public enum Convention
{
    /// <summary>Every cause is confirmed by its check before a part is bought, the last one too.</summary>
    ConfirmEvery,

    /// <summary>When one cause is left it is taken to be it, without a check.</summary>
    InferLast,
}

/// <summary>One check for each cause, one cause present, each check certain.</summary>
/// <param name="Checks">Their probabilities sum to 1, or to less where something else is possible.</param>
/// <param name="Setups">What the preparations take.</param>
/// <param name="Convention">When checking ends.</param>
/// <param name="Scale">What is made small.</param>
public sealed record OrderProblem(
    ImmutableArray<CauseCheck> Checks, ImmutableArray<Setup> Setups, Convention Convention, CostScale Scale);

/// <summary>How an order was found.</summary>
public enum OrderMethod
{
    /// <summary>As somebody else put it.</summary>
    Given,

    /// <summary>Exact: falling probability per cost.</summary>
    RatioRule,

    /// <summary>Exact: each cause tried as the one left, the rest by probability per cost.</summary>
    LeaveOneRule,

    /// <summary>Exact: dynamic programming over the sets of checks done.</summary>
    EverySet,

    /// <summary>Not proved best: blocks of checks that share preparations, then moves while any helps.</summary>
    Blocks,
}

/// <param name="Checks">Ids in order; under <see cref="Convention.InferLast"/> the last one is not done.</param>
/// <param name="Cost">Expected, on the problem's scale.</param>
/// <param name="Expected">Expected minutes and money.</param>
/// <param name="Worst">When the last cause is the one.</param>
/// <param name="Method">How it was found, so that a reader knows whether it is the best.</param>
public sealed record CheckOrder(
    ImmutableArray<string> Checks, double Cost, Effort Expected, Effort Worst, OrderMethod Method);
