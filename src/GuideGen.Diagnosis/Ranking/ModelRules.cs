using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What must hold between the parts of a model. A breach is the caller's bug, so it throws.</summary>
internal static class ModelRules
{
    public static void Check(ImmutableArray<Hypothesis> hypotheses, ModelParts parts)
    {
        Must(hypotheses.All(h => h.Prior >= 0 && double.IsFinite(h.Prior)) && hypotheses.Sum(h => h.Prior) > 0,
            "Priors are 0 or more, and one of them is above 0.");
        Distinct(hypotheses.Select(h => h.Id), "hypothesis");
        Distinct(parts.Findings.Select(f => f.Id), "finding");
        Distinct(parts.Checks.Select(c => c.Id), "check");
        int width = hypotheses.Length;
        foreach (Finding finding in parts.Findings)
            Row(finding.Id, finding.Likelihoods, width);
        foreach (UncertainCheck check in parts.Checks)
            Table(check.Id, [.. check.Outcomes.Select(o => o.Likelihoods)], width);
        Groups(parts, width);
    }

    static void Groups(ModelParts parts, int width)
    {
        HashSet<string> known = [.. parts.Findings.Select(f => f.Id)];
        Distinct(parts.Groups.SelectMany(g => g.Members), "member of a group");
        foreach (FindingGroup group in parts.Groups)
        {
            Must(group.Members.All(known.Contains), $"Group {group.Id} has a member that is no finding.");
            if (group.Rule != GroupRule.Joint)
                continue;
            Distinct(group.Joint.Select(r => r.Pattern), $"pattern of {group.Id}");
            Must(group.Joint.Length == 1 << group.Members.Length
                && group.Joint.All(r => r.Pattern.Length == group.Members.Length && r.Pattern.All(c => c is '0' or '1')),
                $"Group {group.Id} needs each combination of its members once.");
            Table(group.Id, [.. group.Joint.Select(r => r.Likelihoods)], width);
        }
    }

    static void Table(string id, ImmutableArray<LikelihoodRow> rows, int width)
    {
        Must(rows.Length >= 2, $"{id} needs at least two outcomes.");
        foreach (LikelihoodRow row in rows)
            Row(id, row, width);
        LikelihoodRow sum = LikelihoodTable.Map(rows, (_, column) => [.. column.Select(_ => column.Sum())])[0];
        Must(sum.Values().All(v => Math.Abs(v.Value - 1) < 1e-6), $"The outcomes of {id} do not sum to 1.");
    }

    static void Row(string id, LikelihoodRow row, int width) => Must(
        row.Count == width && row.Values().All(v => v.Value is >= 0 and <= 1),
        $"{id} needs one likelihood between 0 and 1 for each hypothesis.");

    static void Distinct(IEnumerable<string> ids, string what)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (string id in ids)
            Must(seen.Add(id), $"The {what} {id} is there twice.");
    }

    static void Must(bool holds, string message)
    {
        if (!holds)
            throw new ArgumentException(message);
    }
}
