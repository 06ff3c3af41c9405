using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>
/// Dynamic programming over outcome histories. A history is a number in which each check has a digit: 0 not done,
/// else its outcome plus one. Weights are the causes' probabilities times the likelihood of all outcomes so far.
/// </summary>
internal sealed class StoppingSearch
{
    readonly StoppingProblem problem;
    readonly SetupLedger ledger;
    readonly long[] needs;
    readonly int[] places;
    readonly double[][][] likelihoods;
    readonly double[] known;
    readonly double[] prior;
    Effort expected;
    double wrong;

    public StoppingSearch(StoppingProblem problem)
    {
        this.problem = problem;
        ledger = new(problem.Setups, problem.Checks.SelectMany(c => c.Setups));
        needs = [.. problem.Checks.Select(c => ledger.MaskOf(c.Setups))];
        likelihoods = [.. problem.Checks.Select(c => c.Outcomes.Select(o => o.Likelihoods.ToArray()).ToArray())];
        places = new int[problem.Checks.Length];
        int histories = 1;
        for (int check = 0; check < places.Length; check++)
        {
            places[check] = histories;
            histories *= problem.Checks[check].Outcomes.Length + 1;
        }

        known = new double[histories];
        Array.Fill(known, double.NaN);
        double sum = problem.Causes.Sum(c => c.Probability);
        prior = [.. problem.Causes.Select(c => c.Probability / sum)];
    }

    public StoppingPlan Plan(ImmutableArray<string> leftOut)
    {
        double cost = Choose(new(0, 0), prior).Cost;
        StoppingNode root = Node(new(0, 0), prior);
        return new(root, cost, expected, wrong, leftOut);
    }

    readonly record struct History(int Number, long Setups);

    bool IsOpen(History history, int check) =>
        history.Number / places[check] % (problem.Checks[check].Outcomes.Length + 1) == 0;

    /// <summary>Cost after one more outcome; the weights are only worked out for a history that is new.</summary>
    double CostAfter(History history, double[] weights, int check, int outcome)
    {
        History after = After(history, check, outcome);
        if (double.IsNaN(known[after.Number]))
            known[after.Number] = Choose(after, Weights(weights, check, outcome)).Cost;
        return known[after.Number];
    }

    (int Check, double Cost) Choose(History history, double[] weights)
    {
        double mass = weights.Sum();
        (int Check, double Cost) best = (-1, problem.WrongRepair * (mass - weights.Max()));
        for (int check = 0; check < places.Length; check++)
        {
            if (!IsOpen(history, check))
                continue;
            double cost = mass * problem.Scale.Of(EffortOf(history, check));
            // What comes after is never negative, so a check that costs as much already cannot win.
            if (cost >= best.Cost - OrderCosts.Equal)
                continue;
            for (int outcome = 0; outcome < problem.Checks[check].Outcomes.Length; outcome++)
                cost += CostAfter(history, weights, check, outcome);
            if (cost < best.Cost - OrderCosts.Equal)
                best = (check, cost);
        }

        return best;
    }

    StoppingNode Node(History history, double[] weights)
    {
        int check = Choose(history, weights).Check;
        double mass = weights.Sum();
        if (check < 0)
            return End(weights, mass);
        expected += mass * EffortOf(history, check);
        var branches = ImmutableArray.CreateBuilder<StoppingBranch>();
        for (int outcome = 0; outcome < problem.Checks[check].Outcomes.Length; outcome++)
        {
            double[] after = Weights(weights, check, outcome);
            double chance = after.Sum();
            if (chance > 0)
                branches.Add(new(
                    problem.Checks[check].Outcomes[outcome].Id,
                    chance / mass,
                    Node(After(history, check, outcome), after)));
        }

        return new StoppingStep(problem.Checks[check].Id, branches.ToImmutable());
    }

    StoppingEnd End(double[] weights, double mass)
    {
        int top = Enumerable.Range(0, weights.Length)
            .OrderByDescending(c => weights[c]).ThenBy(c => problem.Causes[c].Id, StringComparer.Ordinal).First();
        wrong += mass - weights[top];
        return new(problem.Causes[top].Id, weights[top] / mass);
    }

    Effort EffortOf(History history, int check) =>
        problem.Checks[check].Effort + ledger.Missing(needs[check], history.Setups);

    History After(History history, int check, int outcome) =>
        new(history.Number + (outcome + 1) * places[check], history.Setups | needs[check]);

    double[] Weights(double[] weights, int check, int outcome)
    {
        double[] after = new double[weights.Length];
        for (int c = 0; c < after.Length; c++)
            after[c] = weights[c] * likelihoods[check][outcome][c];
        return after;
    }
}
