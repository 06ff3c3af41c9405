using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>Cases in which a finding was told to be there, and in which it was told not to be, by the hypotheses that have such cases.</summary>
internal sealed class Tally
{
    readonly Dictionary<int, (int Present, int Absent)> told = [];

    public static Tally Empty { get; } = new();

    public IEnumerable<int> Places => told.Keys;

    public (int Present, int Absent) At(int hypothesis) => told.GetValueOrDefault(hypothesis);

    public void Add(int hypothesis, bool present) => Add(hypothesis, present, 1);

    public Tally Without(int hypothesis, bool present)
    {
        Tally copy = new();
        foreach (var (place, counts) in told)
            copy.told.Add(place, counts);
        copy.Add(hypothesis, present, -1);
        return copy;
    }

    void Add(int hypothesis, bool present, int by)
    {
        var (there, not) = At(hypothesis);
        told[hypothesis] = present ? (there + by, not) : (there, not + by);
    }
}

/// <param name="Present">Cases in which it was there.</param>
/// <param name="Absent">Cases in which it was not.</param>
/// <param name="Silent">Cases that do not say, and need not have looked.</param>
internal readonly record struct Shown(int Present, int Absent, int Silent)
{
    public int Asked => Present + Absent;

    public static Shown operator +(Shown one, Shown other) =>
        new(one.Present + other.Present, one.Absent + other.Absent, one.Silent + other.Silent);

    public static Shown operator -(Shown one, Shown other) => one + new Shown(-other.Present, -other.Absent, -other.Silent);
}

/// <summary>What the cases show of one finding.</summary>
/// <param name="Counts">Of all findings.</param>
/// <param name="Looking">Searches for it. If there is any, only their cases count: the others may have passed it over.</param>
/// <param name="Tally">What those cases told, or, without a search, what all cases told.</param>
internal sealed record FindingCounts(CaseCounts Counts, ImmutableArray<Search> Looking, Tally Tally)
{
    public bool IsLookedFor => !Looking.IsEmpty;

    /// <summary>Hypotheses whose counts are not those of their kind.</summary>
    public IEnumerable<int> Places => Counts.LeftOutPlace is { } place ? Tally.Places.Append(place) : Tally.Places;

    public Shown At(int hypothesis)
    {
        var (present, absent) = Tally.At(hypothesis);
        if (!IsLookedFor)
            return new(present, absent, Counts.CountOf(hypothesis) - present - absent);
        int asked = 0;
        foreach (Search search in Looking)
            asked += Counts.SearchedBy(search, hypothesis);
        // A case that looked for it and does not name it did not have it.
        return new(present, asked - present, 0);
    }

    /// <summary>Of all hypotheses together.</summary>
    public Shown All()
    {
        int present = Tally.Places.Sum(p => Tally.At(p).Present);
        if (IsLookedFor)
            return new(present, Looking.Sum(Counts.SearchedBy) - present, 0);
        int absent = Tally.Places.Sum(p => Tally.At(p).Absent);
        return new(present, absent, Counts.All - present - absent);
    }
}
