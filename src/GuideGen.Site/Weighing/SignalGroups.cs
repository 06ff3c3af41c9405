using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Model;
using Finding = GuideGen.Diagnosis.Ranking.Finding;

namespace GuideGen.Site.Weighing;

/// <summary>
/// Findings that go back to one signal: as the author says, and otherwise the codes for one and the same circuit or
/// quantity (too low, too high, not plausible), of which only the one that tells causes apart most counts.
/// </summary>
static class SignalGroups
{
    public static ImmutableArray<FindingGroup> Of(GuideContent guide, ImmutableArray<Finding> findings)
    {
        var authored = guide.Vehicle.Signals.Select(s => Authored(guide, s.Key.Value, s.Value, findings)).ToList();
        var taken = authored.SelectMany(g => g.Members).ToHashSet();
        return [.. authored, .. SameSubject(findings.Select(f => f.Id).Where(id => !taken.Contains(id)))];
    }

    static IEnumerable<FindingGroup> SameSubject(IEnumerable<string> ids) =>
        from id in ids
        let entry = TroubleCode.TryParse(id, out var code) ? CodeCatalogue.FindStandard(code) : null
        where entry is not null
        group id by (entry.Subject, Sides: string.Join(',', entry.Sides.Select(s => $"{s.Kind} {s.Value}"))) into codes
        where codes.Count() > 1
        select new FindingGroup(codes.Order(StringComparer.Ordinal).First(), GroupRule.Strongest, [.. codes], []);

    static FindingGroup Authored(GuideContent guide, string name, SameSignal signal, ImmutableArray<Finding> findings)
    {
        var known = findings.ToDictionary(f => f.Id);
        ImmutableArray<string> members = [.. signal.Codes.Select(c => c.Value.ToString()).Concat(signal.Symptoms.Select(s => s.Value)).Where(known.ContainsKey)];
        return signal.Count.Value switch
        {
            SignalCount.Strongest => new(name, GroupRule.Strongest, members, []),
            SignalCount.Shared => new(name, GroupRule.Shared, members, []),
            SignalCount.Joint when members.Length == signal.Size => new(name, GroupRule.Joint, members, Table(guide, signal, [.. members.Select(m => known[m])])),
            // A code that no page names has no likelihoods, so a table with it cannot be used.
            SignalCount.Joint => new(name, GroupRule.Strongest, members, []),
            _ => throw new ArgumentOutOfRangeException(nameof(signal)),
        };
    }

    static ImmutableArray<JointRow> Table(GuideContent guide, SameSignal signal, ImmutableArray<Finding> members)
    {
        var stated = signal.Joint.ToDictionary(j => j.Key.Value, j => j.Value.ToDictionary(r => r.Key.Value, r => r.Value.Value));
        string?[] hypotheses = [.. guide.Faults.All.Select(f => f.Origin.Slug), null];
        return
        [
            .. signal.Combinations.Select(pattern => new JointRow(
                pattern,
                [.. hypotheses.Select((slug, h) => slug is not null && stated.TryGetValue(slug, out var row) ? row[pattern] / row.Values.Sum() : Independent(members, pattern, h))])),
        ];
    }

    static double Independent(ImmutableArray<Finding> members, string pattern, int hypothesis) =>
        members.Zip(pattern, (m, has) => has == '1' ? m.Likelihoods[hypothesis] : 1 - m.Likelihoods[hypothesis]).Aggregate(1.0, (product, p) => product * p);
}
