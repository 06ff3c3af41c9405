using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>The units of a model as <see cref="QuietSign"/>s, for the cases of one kind of search.</summary>
internal sealed class QuietUnits
{
    readonly ImmutableArray<(int Unit, ImmutableArray<QuietSign> Signs, EvidenceTerm Speaks)> quiet;

    /// <param name="units">Of each the members that are looked for.</param>
    /// <param name="make">A finding that is quiet.</param>
    /// <param name="hypotheses">Their number.</param>
    public QuietUnits(
        ImmutableArray<(FindingGroup? Group, ImmutableArray<Finding> LookedFor)> units, Func<Finding, QuietSign> make, int hypotheses)
    {
        ILookup<bool, int> canBe = Enumerable.Range(0, units.Length).Where(u => !units[u].LookedFor.IsEmpty).ToLookup(u => units[u].Group is null or { Rule: GroupRule.Strongest });
        Loud = [.. canBe[false]];
        quiet = [.. canBe[true].Select(u => (u, Signs: units[u].LookedFor.Select(make).ToImmutableArray()))
            .Select(u => (u.u, u.Signs, u.Signs.Length == 1 ? u.Signs[0].Absent : u.Signs.MaxBy(s => EvidenceTerms.Spread(s.Absent))!.Absent))];
        var terms = new ImmutableArray<EvidenceTerm>[units.Length];
        Array.Fill(terms, []);
        foreach (var (unit, _, speaks) in quiet)
            terms[unit] = [speaks];
        Absent = new(terms, hypotheses);
    }

    /// <summary>All of them, before they are without the case under its own cause.</summary>
    public AbsentSigns Absent { get; }

    /// <summary>Units that are different for each case.</summary>
    public ImmutableArray<int> Loud { get; }

    /// <summary>What the units say under the cause of the case, as logarithms.</summary>
    /// <param name="apart">Units that are not asked. A group of which another member speaks, now that the case is left out, is added.</param>
    public double Own(int cause, ISet<int> apart)
    {
        double sum = 0;
        foreach (var (unit, signs, speaks) in quiet)
        {
            if (apart.Contains(unit))
                continue;
            var (sign, own) = signs.Length == 1 ? (signs[0], signs[0].Own(cause)) : Strongest(signs, cause);
            if (sign.Absent == speaks)
                sum += own;
            else
                apart.Add(unit);
        }

        return sum;
    }

    static (QuietSign Sign, double Own) Strongest(ImmutableArray<QuietSign> signs, int cause) =>
        signs.Select(s => (Sign: s, Own: s.Own(cause))).MaxBy(s => s.Sign.Spread(cause, s.Own));
}
