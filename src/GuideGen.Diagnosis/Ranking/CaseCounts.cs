using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// What the cases tell, counted once by hypothesis of a model; a case can be left out without counting anew. What was
/// looked for is counted apart from what owners told as they liked.
/// </summary>
public sealed class CaseCounts
{
    readonly int[] cases;
    readonly List<Search> searches = [];
    readonly Dictionary<string, Tally> lookedFor = new(StringComparer.Ordinal);
    readonly Dictionary<string, Tally> told = new(StringComparer.Ordinal);
    readonly Dictionary<(string Check, string Outcome), Dictionary<int, int>> outcomes = [];
    readonly Dictionary<SolvedCase, int> places = new(ReferenceEqualityComparer.Instance);
    readonly SolvedCase? leftOut;

    CaseCounts(RankingModel model, IEnumerable<SolvedCase> solved)
    {
        cases = new int[model.Hypotheses.Length];
        var index = model.Hypotheses.Select((h, i) => (h.Id, i)).ToDictionary(h => h.Id, h => h.i, StringComparer.Ordinal);
        foreach (SolvedCase one in solved)
            Add(index.GetValueOrDefault(one.Cause, cases.Length - 1), one);
        Kinds = KindsOf(cases, searches);
    }

    CaseCounts(CaseCounts whole, SolvedCase without)
    {
        (cases, searches, Kinds, leftOut) = (whole.cases, whole.searches, whole.Kinds, without);
        (lookedFor, told, outcomes, places) = (whole.lookedFor, whole.told, whole.outcomes, whole.places);
        LeftOutPlace = whole.PlaceOf(without);
    }

    public static CaseCounts Of(RankingModel model, IEnumerable<SolvedCase> cases) => new(model, cases);

    /// <param name="one">One of the cases that were counted.</param>
    public CaseCounts Without(SolvedCase one) => new(this, one);

    /// <summary>
    /// Hypotheses of one kind have as many cases of each kind of search: before a case tells more of one of them, nothing that
    /// nobody stated is likelier under it than under the others.
    /// </summary>
    internal CauseKinds Kinds { get; }

    /// <summary>The hypothesis of the case that is left out: it has counts that its kind has not.</summary>
    internal int? LeftOutPlace { get; }

    /// <param name="one">One of the cases that were counted.</param>
    internal int PlaceOf(SolvedCase one) => places[one];

    internal int CountOf(int hypothesis) => cases[hypothesis] - (LeftOutPlace == hypothesis ? 1 : 0);

    /// <summary>Cases of all hypotheses.</summary>
    internal int All => places.Count - (leftOut is null ? 0 : 1);

    internal FindingCounts Of(string finding)
    {
        ImmutableArray<Search> looking = [.. searches.Where(s => s.For.Contains(finding))];
        Tally tally = (looking.IsEmpty ? told : lookedFor).GetValueOrDefault(finding, Tally.Empty);
        Answers? without = leftOut?.Answers is { } answers && answers.LookedFor.Contains(finding) == !looking.IsEmpty ? answers : null;
        return new(this, looking, without?.Has(finding) is { } present ? tally.Without(LeftOutPlace!.Value, present) : tally);
    }

    /// <summary>Cases whose check had the outcome, by hypothesis; hypotheses without one are not in it.</summary>
    internal IReadOnlyDictionary<int, int> OfOutcome(string check, string outcome)
    {
        Dictionary<int, int> counts = outcomes.GetValueOrDefault((check, outcome), []);
        if (leftOut is null || leftOut.Answers.Outcomes.GetValueOrDefault(check) != outcome)
            return counts;
        counts = new(counts);
        counts[LeftOutPlace!.Value]--;
        return counts;
    }

    /// <summary>Cases whose answers fit, by hypothesis; hypotheses without one are not in it.</summary>
    internal IReadOnlyDictionary<int, int> Count(Func<Answers, bool> fits) =>
        places.Where(c => c.Key != leftOut && fits(c.Key.Answers)).CountBy(c => c.Value).ToDictionary();

    internal int SearchedBy(Search search, int hypothesis) =>
        search.CountOf(hypothesis) - (LeftOutPlace == hypothesis && IsLeftOutOf(search) ? 1 : 0);

    /// <summary>Cases of all hypotheses.</summary>
    internal int SearchedBy(Search search) => search.All - (IsLeftOutOf(search) ? 1 : 0);

    bool IsLeftOutOf(Search search) => ReferenceEquals(search.For, leftOut?.Answers.LookedFor);

    void Add(int hypothesis, SolvedCase one)
    {
        cases[hypothesis]++;
        places.Add(one, hypothesis);
        if (one.Answers.LookedFor.Count > 0)
            SearchOf(one.Answers.LookedFor).Add(hypothesis);
        foreach (var (finding, present) in one.Answers.Findings)
        {
            var tallies = one.Answers.LookedFor.Contains(finding) ? lookedFor : told;
            if (!tallies.TryGetValue(finding, out Tally? tally))
                tallies.Add(finding, tally = new());
            tally.Add(hypothesis, present);
        }

        foreach (var (check, outcome) in one.Answers.Outcomes)
        {
            if (!outcomes.TryGetValue((check, outcome), out var counts))
                outcomes.Add((check, outcome), counts = []);
            counts[hypothesis] = counts.GetValueOrDefault(hypothesis) + 1;
        }
    }

    Search SearchOf(IReadOnlySet<string> wanted)
    {
        Search? known = searches.Find(s => ReferenceEquals(s.For, wanted));
        if (known is null)
            searches.Add(known = new(wanted, cases.Length));
        return known;
    }

    static CauseKinds KindsOf(int[] cases, List<Search> searches)
    {
        Dictionary<string, int> kinds = new(StringComparer.Ordinal);
        return new([.. cases.Select((count, h) =>
        {
            string key = string.Join(' ', searches.Select(s => s.CountOf(h)).Prepend(count));
            return kinds.TryGetValue(key, out int kind) ? kind : kinds[key] = kinds.Count;
        })]);
    }
}

/// <summary>Cases by hypothesis that looked for the same findings.</summary>
internal sealed class Search(IReadOnlySet<string> wanted, int hypotheses)
{
    readonly int[] cases = new int[hypotheses];

    public IReadOnlySet<string> For => wanted;

    /// <summary>Of all hypotheses.</summary>
    public int All { get; private set; }

    public int CountOf(int hypothesis) => cases[hypothesis];

    public void Add(int hypothesis)
    {
        cases[hypothesis]++;
        All++;
    }
}
