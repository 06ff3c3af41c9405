using System.Collections.Immutable;
using CsCheck;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

/// <summary>Models and answers for tests; the last number of each row belongs to 'something else'.</summary>
static class RankingModels
{
    public static RankingModel Make(
        (string Id, double Prior)[] causes, double elsePrior, params (string Id, double[] Likelihoods)[] findings) =>
        RankingModel.Create(
            causes.Select(c => new Hypothesis(c.Id, c.Prior)),
            elsePrior,
            new() { Findings = [.. findings.Select(f => new Finding(f.Id, [.. f.Likelihoods]))] });

    public static Answers Present(params string[] findings) =>
        findings.Aggregate(Answers.Nothing, (answers, finding) => answers.With(finding, true));

    /// <summary>Random models of 1 to 6 causes, up to 7 findings, of which some are grouped, and up to 4 checks.</summary>
    public static Gen<RankingModel> Random { get; } =
        from causes in Gen.Int[1, 6]
        from priors in Gen.Double[0, 5].Array[causes]
        from elsePrior in Gen.Double[0.01, 2]
        from findings in Gen.Double[0, 1].Array[causes + 1].Array[0, 7]
        from rule in Gen.Enum<GroupRule>()
        from grouped in Gen.Int[0, 3]
        from joint in Gen.Double[0.01, 1].Array[causes + 1].Array[8]
        from checks in Gen.Select(
            Gen.Double[0.01, 1].Array[causes + 1].Array[2, 4], Gen.Int[0, 40], Gen.Bool, Gen.Bool).Array[0, 4]
        select RankingModel.Create(
            priors.Select((p, i) => new Hypothesis($"cause-{i}", p)),
            elsePrior,
            new()
            {
                Findings = [.. findings.Select((f, i) => new Finding($"finding-{i}", [.. f]))],
                Groups = Group(rule, Math.Min(grouped, findings.Length), joint),
                Checks = [.. checks.Select((c, i) => Check(i, c.Item1, c.Item2, c.Item3, c.Item4))],
                Setups = [new("undertray-off", new(15))],
            });

    public static Gen<Answers> AnswersTo(RankingModel model) =>
        from found in Gen.Int[0, 2].Array[model.Findings.Length]
        from seen in Gen.Int[-1, 3].Array[model.Checks.Length]
        select new Answers(
            model.Findings.Select((f, i) => (f.Id, found[i])).Where(f => f.Item2 < 2)
                .ToImmutableDictionary(f => f.Id, f => f.Item2 == 1),
            model.Checks.Select((c, i) => (Check: c, Seen: seen[i])).Where(c => c.Seen >= 0)
                .ToImmutableDictionary(c => c.Check.Id, c => c.Check.Outcomes[c.Seen % c.Check.Outcomes.Length].Id));

    public static Gen<(RankingModel Model, Answers Answers)> RandomWithAnswers { get; } =
        Random.SelectMany(model => AnswersTo(model).Select(answers => (model, answers)));

    public static ImmutableArray<ImmutableArray<double>> Normalised(double[][] rows) =>
    [
        .. rows.Select(row => row.Select((v, c) => v / rows.Sum(r => r[c])).ToImmutableArray()),
    ];

    static ImmutableArray<FindingGroup> Group(GroupRule rule, int members, double[][] joint)
    {
        if (members < 2)
            return [];
        int rows = 1 << members;
        var table = Normalised(joint[..rows]);
        return
        [
            new(
                "group",
                rule,
                [.. Enumerable.Range(0, members).Select(i => $"finding-{i}")],
                rule != GroupRule.Joint
                    ? []
                    : [.. table.Select((row, i) => new JointRow(Convert.ToString(i, 2).PadLeft(members, '0'), [.. row]))]),
        ];
    }

    static UncertainCheck Check(int number, double[][] outcomes, int minutes, bool setup, bool tool) => new(
        $"check-{number}",
        new(minutes),
        [.. Normalised(outcomes).Select((row, i) => new Outcome($"outcome-{i}", [.. row]))],
        setup ? ["undertray-off"] : [],
        tool ? ["pressure gauge"] : []);
}
