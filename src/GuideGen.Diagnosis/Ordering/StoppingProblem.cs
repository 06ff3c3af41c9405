using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>Checks that can err: go on checking, or stop and repair what is most likely?</summary>
/// <param name="Causes">Probabilities; scaled to sum to 1.</param>
/// <param name="Checks">Outcomes with likelihoods in the order of <paramref name="Causes"/>. Each check is done at most once.</param>
/// <param name="Setups">What the preparations take.</param>
/// <param name="WrongRepair">
/// What repairing the wrong thing costs, on the scale: parts, hours and the risk of driving on. State all of it; where
/// only minutes are counted, fitting a part untested always looks best.
/// </param>
/// <param name="Scale">What is made small.</param>
public sealed record StoppingProblem(
    ImmutableArray<WeightedCause> Causes,
    ImmutableArray<UncertainCheck> Checks,
    ImmutableArray<Setup> Setups,
    double WrongRepair,
    CostScale Scale);

public abstract record StoppingNode;

public sealed record StoppingStep(string Check, ImmutableArray<StoppingBranch> Next) : StoppingNode;

/// <param name="Outcome">The outcome.</param>
/// <param name="Probability">How likely it is at this step.</param>
/// <param name="Node">What to do then.</param>
public sealed record StoppingBranch(string Outcome, double Probability, StoppingNode Node);

/// <param name="Cause">Repair this.</param>
/// <param name="Probability">How likely it is the cause.</param>
public sealed record StoppingEnd(string Cause, double Probability) : StoppingNode;

/// <param name="Root">The plan.</param>
/// <param name="Cost">Expected, loss of wrong repairs included, on the scale.</param>
/// <param name="Expected">Expected minutes and money of the checks.</param>
/// <param name="ChanceWrong">How likely the repair is the wrong one.</param>
/// <param name="LeftOut">
/// Checks that were not considered because all of them together are too many to solve; the plan is the best without
/// them. Empty for an exact plan.
/// </param>
public sealed record StoppingPlan(
    StoppingNode Root, double Cost, Effort Expected, double ChanceWrong, ImmutableArray<string> LeftOut);
