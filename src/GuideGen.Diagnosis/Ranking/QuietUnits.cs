using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>The units of a model as <see cref="QuietSign"/>s, for the cases of one kind of search.</summary>
internal sealed class QuietUnits
{
    readonly CauseKinds kinds;
    readonly int units;
    readonly ImmutableArray<Unit> quiet;
    readonly ConcurrentDictionary<int, Lazy<Said>> byKind = [];

    /// <param name="kinds">Of the causes.</param>
    /// <param name="units">Of each the members that are looked for.</param>
    /// <param name="make">A finding that is quiet.</param>
    public QuietUnits(
        CauseKinds kinds, ImmutableArray<(FindingGroup? Group, ImmutableArray<Finding> LookedFor)> units, Func<Finding, QuietSign> make)
    {
        (this.kinds, this.units) = (kinds, units.Length);
        ILookup<bool, int> canBe = Enumerable.Range(0, units.Length).Where(u => !units[u].LookedFor.IsEmpty)
            .ToLookup(u => units[u].Group is null or { Rule: GroupRule.Strongest });
        Loud = [.. canBe[false]];
        quiet = [.. canBe[true].Select(u => new Unit(u, [.. units[u].LookedFor.Select(make)]))];
        var terms = new ImmutableArray<EvidenceTerm>[units.Length];
        Array.Fill(terms, []);
        foreach (Unit unit in quiet)
            terms[unit.Place] = [unit.Speaker.Absent];
        Absent = new(terms, kinds.Count);
    }

    /// <summary>All of them, before they are without the case under its own cause.</summary>
    public AbsentSigns Absent { get; }

    /// <summary>Units that are different for each case.</summary>
    public ImmutableArray<int> Loud { get; }

    /// <summary>What the units say under the cause of the case, as logarithms.</summary>
    /// <param name="apart">Units that are not asked. A group of which another member speaks, now that the case is left out, is added.</param>
    public double Own(int cause, ISet<int> apart)
    {
        Said said = byKind.GetOrAdd(kinds.Of(cause), kind => new(() => SaidOf(kind, cause))).Value;
        apart.UnionWith(said.ByOthers);
        return said.Sum - apart.Sum(u => said.Own[u]);
    }

    Said SaidOf(int kind, int cause)
    {
        double[] own = new double[units];
        List<int> byOthers = [];
        foreach (Unit unit in quiet)
        {
            var (sign, log) = unit.Signs.Select(s => (Sign: s, Log: s.Own(cause))).MaxBy(s => s.Sign.Spread(kind, s.Log));
            if (sign == unit.Speaker)
                own[unit.Place] = log;
            else
                byOthers.Add(unit.Place);
        }

        return new(own, own.Sum(), [.. byOthers]);
    }

    /// <param name="Place">In the model.</param>
    /// <param name="Signs">Its members that are looked for.</param>
    sealed record Unit(int Place, ImmutableArray<QuietSign> Signs)
    {
        /// <summary>The member that speaks, as long as no case is left out under its own cause.</summary>
        public QuietSign Speaker { get; } = Signs.MaxBy(s => EvidenceTerms.Spread(s.Absent))!;
    }

    /// <param name="Own">By unit, what it says under a cause of the kind.</param>
    /// <param name="Sum">Of all.</param>
    /// <param name="ByOthers">Units of which another member speaks.</param>
    sealed record Said(double[] Own, double Sum, ImmutableArray<int> ByOthers);
}
