using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Proof;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Weighing;

public sealed class GuideWeightsTests
{
    static readonly GuideContent Demo = GuideLoader.Load(new FolderFiles(Repository.Root)).Guide;
    static readonly GuideWeights Weights = GuideWeights.Of(Demo);

    [Fact]
    public void Every_level_of_proof_is_reached_by_some_case_and_only_the_proved_ones_speak_for_their_fault()
    {
        var levels = Demo.Cases.GroupBy(c => Weights.Proofs[c.Origin.Slug].Level).ToDictionary(g => g.Key, g => g.Count());
        Assert.Equal(Enum.GetValues<ProofLevel>(), levels.Keys.Order());
        Assert.Equal(levels[ProofLevel.Refuted], Weights.Cases.Count(c => c.Cause == WeightedCause.SomethingElse));
        Assert.Equal(levels[ProofLevel.Confirmed] + levels[ProofLevel.Proved] + levels[ProofLevel.Refuted], Weights.Cases.Length);
    }

    [Fact]
    public void A_variant_is_never_given_a_fault_or_a_check_that_is_not_about_it()
    {
        foreach (var (slug, _) in Demo.Vehicle.Variants)
        {
            var model = Weights.Model(slug.Value);
            Assert.Equal(
                Demo.Faults.All.Where(f => !GuideWeights.Fits(f, slug.Value)).Select(f => f.Origin.Slug),
                model.Hypotheses.Where(h => h.Prior == 0).Select(h => h.Id));
            Assert.All(model.Checks, c => Assert.True(GuideWeights.Fits(Demo.Checks.Find(c.Id)!, slug.Value)));
        }
    }

    [Fact]
    public void The_causes_of_a_symptom_sum_to_one_and_always_leave_room_for_something_else()
    {
        foreach (var symptom in Demo.Symptoms.All.Select(s => s.Origin.Slug))
        {
            var causes = Weights.CausesOf(symptom);
            Assert.Equal(1, causes.Sum(c => c.Probability), 12);
            Assert.InRange(causes.Single(c => c.Id == WeightedCause.SomethingElse).Probability, 0.001, 0.999);
        }
    }

    [Fact]
    public void A_code_that_was_not_looked_for_is_unknown_and_one_that_was_looked_for_is_there_or_not()
    {
        var read = Demo.Cases.First(c => c.Codes.Length == 1);
        var code = read.Codes[0].Key.Value.ToString();
        Answers AnswersOf(CodeScan scan) => GuideWeights.Of(Demo with { Cases = [read with { Scan = scan }] }).Cases.Single().Answers;
        string[] codes = [.. CodeUses.All(Demo).Select(c => c.ToString())];
        Assert.Equal([code], codes.Where(AnswersOf(CodeScan.Unknown).Knows));
        Assert.Equal(codes, codes.Where(AnswersOf(CodeScan.All).Knows));
        Assert.Equal([code], codes.Where(c => AnswersOf(CodeScan.All).Has(c) == true));
        Assert.All(codes.Where(c => AnswersOf(CodeScan.Engine).Knows(c) && c != code), c => Assert.StartsWith("P", c, StringComparison.Ordinal));
    }

    [Fact]
    public void Codes_of_one_circuit_that_no_author_has_grouped_count_by_the_strongest()
    {
        var group = Weights.Authored.Groups.Single(g => g.Members.Contains("P0102"));
        Assert.Equal(GroupRule.Strongest, group.Rule);
        Assert.All(group.Members, m => Assert.Matches("^P010[01234F]$", m));
    }

    [Fact]
    public void A_sign_that_an_author_has_grouped_is_in_no_other_group()
    {
        var members = Weights.Authored.Groups.SelectMany(g => g.Members).ToList();
        Assert.Equal(members.Distinct(), members);
        Assert.Equal(["P0299", "reduced-power"], Weights.Authored.Groups.Single(g => g.Id == "low-boost").Members);
    }

    [Fact]
    public void A_table_of_combinations_is_taken_as_stated_and_is_a_product_for_the_faults_it_leaves_out()
    {
        var model = Weights.Authored;
        var table = model.Groups.Single(g => g.Id == "countdown");
        int At(string fault) => model.Hypotheses.Select(h => h.Id).ToList().IndexOf(fault);
        Assert.Equal(0.4, table.Joint.Single(r => r.Pattern == "10").Likelihoods[At("reductant-injector-crusted")], 9);

        var other = At("reductant-heater-dead");
        var (first, second) = (model.Findings.Single(f => f.Id == "P20EE").Likelihoods[other], model.Findings.Single(f => f.Id == "P1D30").Likelihoods[other]);
        Assert.Equal(first * (1 - second), table.Joint.Single(r => r.Pattern == "10").Likelihoods[other], 2);
    }
}
