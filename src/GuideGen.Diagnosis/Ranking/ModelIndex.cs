using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>The findings, groups and checks of a model by their ids, for one that is asked often.</summary>
public sealed class ModelIndex(RankingModel model)
{
    readonly Dictionary<string, int> findings = Numbered(model.Findings.Select(f => f.Id));
    readonly Dictionary<string, int> checks = Numbered(model.Checks.Select(c => c.Id));
    readonly Dictionary<string, int> groups = model.Groups.SelectMany((g, i) => g.Members.Select(m => (m, i)))
        .ToDictionary(m => m.m, m => m.i, StringComparer.Ordinal);

    /// <summary>The part of the model that the answers speak of: it ranks them as the whole does.</summary>
    public RankingModel Reduced(Answers answers) => Part(answers.Findings.Keys.Union(answers.LookedFor), answers.Outcomes.Keys);

    /// <summary>Some findings with those that are in a group with them, and some checks.</summary>
    internal RankingModel Part(IEnumerable<string> someFindings, IEnumerable<string> someChecks)
    {
        ImmutableArray<string> known = [.. someFindings];
        ImmutableArray<FindingGroup> needed = [.. Places(known, groups).Select(i => model.Groups[i])];
        return model with
        {
            Findings = [.. Places(known.Concat(needed.SelectMany(g => g.Members)), findings).Select(i => model.Findings[i])],
            Groups = needed,
            Checks = [.. Places(someChecks, checks).Select(i => model.Checks[i])],
        };
    }

    static IEnumerable<int> Places(IEnumerable<string> ids, Dictionary<string, int> index) =>
        ids.Where(index.ContainsKey).Select(id => index[id]).Distinct().Order();

    static Dictionary<string, int> Numbered(IEnumerable<string> ids) =>
        ids.Select((id, i) => (id, i)).ToDictionary(n => n.id, n => n.i, StringComparer.Ordinal);
}
