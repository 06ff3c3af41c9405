using System.Collections.Immutable;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using Outcome = GuideGen.Guide.Model.Outcome;

namespace GuideGen.Site.Weighing;

/// <summary>
/// The guide's own opinion as a ranking model: faults are the causes, codes and symptoms the findings, in the order of
/// their names. A finding is called by its code or by the slug of its symptom, which cannot be mistaken for each other.
/// </summary>
static class AuthoredModel
{
    /// <summary>What of all vehicles has a fault that no page covers, in parts of what the pages cover. From memory, no source.</summary>
    public const double ElseShare = 0.1;

    // How likely a sign is under a fault whose page does not name it. From memory, no source.
    const double StrayCode = 0.01, StraySymptom = 0.03;

    public static RankingModel Of(GuideContent guide)
    {
        ImmutableArray<Diagnosis.Ranking.Finding> findings =
        [
            .. Findings(guide, CodeUses.All(guide).Select(c => (c, c.ToString())), f => f.Codes, StrayCode),
            .. Findings(guide, guide.Symptoms.All.Select(s => (s.Origin.Slug, s.Origin.Slug)), f => f.Symptoms, StraySymptom),
        ];
        return RankingModel.Create(
            guide.Faults.All.Select(f => new Hypothesis(f.Origin.Slug, f.Belief.Value)),
            ElseShare * guide.Faults.All.Sum(f => f.Belief.Value),
            new ModelParts
            {
                Findings = findings,
                Groups = SignalGroups.Of(guide, findings),
                Checks = Checks(guide),
                Setups = [.. guide.Vehicle.Setups.Select(s => new Diagnosis.Setup(s.Key.Value, new Effort(s.Value.Minutes.Value)))],
            });
    }

    static IEnumerable<Diagnosis.Ranking.Finding> Findings<TSign>(
        GuideContent guide,
        IEnumerable<(TSign Sign, string Id)> signs,
        Func<Fault, ImmutableArray<KeyValuePair<Located<TSign>, Located<Guide.Model.Likelihood>>>> listed,
        double stray)
        where TSign : notnull
    {
        var faults = guide.Faults.All;
        var beliefs = faults.Sum(f => f.Belief.Value);
        var stated = faults.SelectMany((f, i) => listed(f).Select(s => (Sign: s.Key.Value, Fault: i, Likelihood: s.Value.Value.Value))).ToLookup(s => s.Sign);
        return signs.Select(s =>
        {
            var known = stated[s.Sign].ToList();
            // Something else shows a sign as often as the average fault does.
            var baseRate = stray + (known.Sum(k => faults[k.Fault].Belief.Value * (k.Likelihood - stray)) / beliefs);
            return new Diagnosis.Ranking.Finding(s.Id, LikelihoodRow.Of(faults.Length + 1, stray, known.Select(k => (k.Fault, k.Likelihood)).Append((faults.Length, baseRate))))
            {
                OthersAreStrays = true,
            };
        });
    }

    static ImmutableArray<UncertainCheck> Checks(GuideContent guide)
    {
        var causes = guide.Faults.All.Select(f => f.Origin.Slug).Append(WeightedCause.SomethingElse).Select((c, i) => (c, i)).ToDictionary(c => c.c, c => c.i);
        return
        [
            .. guide.Checks.All.Select(c => new UncertainCheck(
                c.Origin.Slug,
                new Effort(c.Minutes.Value, c.Money?.Value ?? 0),
                StatedOutcomes.Likelihoods([.. c.Outcomes.Select(o => Stated(o.Key.Value, o.Value))], causes),
                [.. c.Setup.Select(s => s.Value)],
                [.. c.Tools.Select(t => t.Value)])),
        ];
    }

    static StatedOutcome Stated(string id, Outcome outcome) => new(
        id,
        [.. outcome.PointsTo.Select(f => f.Value)],
        [.. outcome.RulesOut.Select(f => f.Value)],
        outcome.Chance.ToImmutableDictionary(c => c.Key.Value, c => c.Value.Value.Value));
}
