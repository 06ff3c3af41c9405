namespace GuideGen.Diagnosis.Ranking;

/// <summary>Cases of each hypothesis in which a finding was there, and in which it was not.</summary>
internal sealed record Tally(int[] Present, int[] Absent)
{
    public static Tally Empty(int width) => new(new int[width], new int[width]);

    public Tally With(int hypothesis, bool present, int by)
    {
        Tally copy = new([.. Present], [.. Absent]);
        copy.Add(hypothesis, present, by);
        return copy;
    }

    public void Add(int hypothesis, bool present, int by) => (present ? Present : Absent)[hypothesis] += by;
}

/// <summary>
/// What the cases tell, counted once by hypothesis of a model; a case can be left out without counting anew. What was
/// looked for is counted apart from what owners told as they liked.
/// </summary>
public sealed class CaseCounts
{
    readonly int[] cases;
    readonly Dictionary<string, Tally> lookedFor = new(StringComparer.Ordinal);
    readonly Dictionary<string, Tally> told = new(StringComparer.Ordinal);
    readonly List<(int Hypothesis, SolvedCase Case)> all = [];
    readonly (int Hypothesis, SolvedCase Case)? leftOut;

    CaseCounts(RankingModel model, IEnumerable<SolvedCase> solved)
    {
        cases = new int[model.Hypotheses.Length];
        var index = model.Hypotheses.Select((h, i) => (h.Id, i)).ToDictionary(h => h.Id, h => h.i, StringComparer.Ordinal);
        foreach (SolvedCase one in solved)
            Add(index.GetValueOrDefault(one.Cause, cases.Length - 1), one);
    }

    CaseCounts(CaseCounts whole, (int, SolvedCase) without)
    {
        (cases, lookedFor, told, all) = ([.. whole.cases], whole.lookedFor, whole.told, whole.all);
        leftOut = without;
        cases[without.Item1]--;
    }

    public static CaseCounts Of(RankingModel model, IEnumerable<SolvedCase> cases) => new(model, cases);

    /// <param name="one">One of the cases that were counted.</param>
    public CaseCounts Without(SolvedCase one) => new(this, all.First(c => ReferenceEquals(c.Case, one)));

    internal int CountOf(int hypothesis) => cases[hypothesis];

    /// <summary>From cases that looked for the finding; null if none ever did.</summary>
    internal Tally? LookedFor(string finding) => Current(lookedFor, finding, isLookedFor: true);

    /// <summary>From cases that told it as their owners liked.</summary>
    internal Tally Told(string finding) => Current(told, finding, isLookedFor: false) ?? Tally.Empty(cases.Length);

    /// <summary>Cases by hypothesis whose answers fit.</summary>
    internal int[] Count(Func<Answers, bool> fits)
    {
        int[] count = new int[cases.Length];
        foreach (var (hypothesis, one) in all)
            if (!ReferenceEquals(one, leftOut?.Case) && fits(one.Answers))
                count[hypothesis]++;
        return count;
    }

    void Add(int hypothesis, SolvedCase one)
    {
        cases[hypothesis]++;
        all.Add((hypothesis, one));
        foreach (var (finding, present) in one.Answers.Findings)
        {
            var tallies = one.LookedFor.Contains(finding) ? lookedFor : told;
            if (!tallies.TryGetValue(finding, out Tally? tally))
                tallies.Add(finding, tally = Tally.Empty(cases.Length));
            tally.Add(hypothesis, present, 1);
        }
    }

    Tally? Current(Dictionary<string, Tally> tallies, string finding, bool isLookedFor)
    {
        Tally? tally = tallies.GetValueOrDefault(finding);
        return tally is not null && leftOut is var (hypothesis, one)
            && one.Answers.Findings.TryGetValue(finding, out bool present) && one.LookedFor.Contains(finding) == isLookedFor
            ? tally.With(hypothesis, present, -1)
            : tally;
    }
}
