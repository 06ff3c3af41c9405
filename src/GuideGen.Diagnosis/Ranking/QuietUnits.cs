using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>The units of a model as <see cref="QuietSign"/>s, for the cases of one kind of search.</summary>
internal sealed class QuietUnits
{
    readonly CauseKinds kinds;
    readonly int units;
    readonly ImmutableArray<(int Unit, ImmutableArray<QuietSign> Signs, EvidenceTerm Speaks)> quiet;
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
        quiet = [.. canBe[true].Select(u => (u, Signs: units[u].LookedFor.Select(make).ToImmutableArray()))
            .Select(u => (u.u, u.Signs, u.Signs.MaxBy(s => EvidenceTerms.Spread(s.Absent))!.Absent))];
        var terms = new ImmutableArray<EvidenceTerm>[units.Length];
        Array.Fill(terms, []);
        foreach (var (unit, _, speaks) in quiet)
            terms[unit] = [speaks];
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
        foreach (var (unit, signs, speaks) in quiet)
        {
            var (sign, log) = signs.Select(s => (Sign: s, Log: s.Own(cause))).MaxBy(s => s.Sign.Spread(kind, s.Log));
            if (sign.Absent == speaks)
                own[unit] = log;
            else
                byOthers.Add(unit);
        }

        return new(own, own.Sum(), [.. byOthers]);
    }

    /// <param name="Own">By unit, what it says under a cause of the kind.</param>
    /// <param name="Sum">Of all.</param>
    /// <param name="ByOthers">Units of which another member speaks.</param>
    sealed record Said(double[] Own, double Sum, ImmutableArray<int> ByOthers);
}
