using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ordering;

/// <summary>A split problem by index: causes and checks sorted by id, outcomes numbered within each check.</summary>
internal sealed class SplitTable
{
    readonly SplitProblem problem;
    readonly ImmutableArray<SplitCheck> checks;
    readonly ImmutableArray<ImmutableArray<string>> outcomeIds;

    public SplitTable(SplitProblem problem)
    {
        this.problem = problem;
        int[] order =
            [.. Enumerable.Range(0, problem.Causes.Length).OrderBy(c => problem.Causes[c].Id, StringComparer.Ordinal)];
        CauseIds = [.. order.Select(c => problem.Causes[c].Id)];
        double sum = problem.Causes.Sum(c => c.Probability);
        if (!(sum > 0) || problem.Causes.Any(c => c.Probability < 0))
            throw new ArgumentException("Probabilities are 0 or more, and one is above 0.", nameof(problem));
        if (problem.Checks.Any(c => c.Outcomes.Length != problem.Causes.Length))
            throw new ArgumentException("A check has one outcome for each cause.", nameof(problem));
        Probability = [.. order.Select(c => problem.Causes[c].Probability / sum)];
        checks = problem.Checks.Sort((a, b) => string.CompareOrdinal(a.Id, b.Id));
        outcomeIds = [.. checks.Select(c => c.Outcomes.Distinct().Order(StringComparer.Ordinal).ToImmutableArray())];
        Outcome = [.. checks.Select((c, i) => order.Select(cause => outcomeIds[i].IndexOf(c.Outcomes[cause])).ToArray())];
        Ledger = new(problem.Setups, checks.SelectMany(c => c.Setups));
        Needs = [.. checks.Select(c => Ledger.MaskOf(c.Setups))];
    }

    public ImmutableArray<string> CauseIds { get; }

    public double[] Probability { get; }

    /// <summary>By check and cause, the number of the outcome.</summary>
    public int[][] Outcome { get; }

    public SetupLedger Ledger { get; }

    public long[] Needs { get; }

    public int Causes => Probability.Length;

    public int Checks => checks.Length;

    public int OutcomesOf(int check) => outcomeIds[check].Length;

    public string CheckId(int check) => checks[check].Id;

    public string OutcomeId(int check, int outcome) => outcomeIds[check][outcome];

    public Effort EffortOf(int check, long done) => checks[check].Effort + Ledger.Missing(Needs[check], done);

    public double CostOf(int check, long done) => problem.Scale.Of(EffortOf(check, done));

    /// <summary>The causes by the outcome they show, without empty parts, in the order of the outcomes' ids.</summary>
    public List<int[]> Split(int check, int[] causes)
    {
        int[] outcome = Outcome[check];
        List<int>?[] parts = new List<int>?[OutcomesOf(check)];
        foreach (int cause in causes)
            (parts[outcome[cause]] ??= []).Add(cause);
        return [.. parts.OfType<List<int>>().Select(part => part.ToArray())];
    }

    public double Scaled(Effort effort) => problem.Scale.Of(effort);
}
