using GuideGen.Diagnosis.Ordering;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Trees;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Tests.Weighing;

/// <summary>Trees in numbers, as 'evidence trees' prints them.</summary>
public sealed class TreeEvidenceTests
{
    const string Path = "content/trees/battery-lamp.yml";

    static readonly GuideContent Demo = GuideLoader.Load(Guides.Open(Guides.Demo)).Guide;

    [Fact]
    public void A_question_that_takes_longer_is_no_saving_for_a_tree_built_without_it()
    {
        var (quick, slow) = (RowOf(Demo), RowOf(GuideLoader.Load(new Overlay(Guides.Open(Guides.Demo)).Replace(Path, "    ask: ", "    minutes: 10\n    ask: ")).Guide));

        Assert.Equal((BestOrder.Exact, BestOrder.Exact), (quick.How, slow.How));
        Assert.True(slow.Written.Expected.Minutes > quick.Written.Expected.Minutes + 1);
        Assert.Equal(quick.Written.Expected.Minutes - quick.Best.Expected.Minutes, slow.Written.Expected.Minutes - slow.Best.Expected.Minutes, 9);
    }

    [Fact]
    public void Going_on_with_checks_that_can_err_is_never_worse_than_repairing_the_likeliest_at_once()
    {
        var weights = GuideWeights.Of(Demo);
        var evidences = new TreeEvidences(Demo, weights);
        var checking = 0;
        foreach (var tree in Demo.Trees.All.Take(12))
        {
            Assert.All(evidences.Of(tree), row =>
            {
                var guess = 1 - weights.CausesOf(tree.Symptom.Value, row.Variant).Max(c => c.Probability);
                Assert.True(row.Stopping.Plan.Cost <= (guess * row.Stopping.WrongRepair) + 1e-9, $"{tree.Origin.Slug} {row.Variant}");
                Assert.InRange(row.Stopping.Plan.ChanceWrong, 0, guess + 1e-9);
                if (row.Stopping.Plan.Root is StoppingStep) checking++;
            });
        }

        Assert.True(checking > 10, $"{checking} trees in which a check pays");
    }

    static TreeEvidence RowOf(GuideContent guide) =>
        new TreeEvidences(guide, GuideWeights.Of(guide)).Of(guide.Trees.Find("battery-lamp")!).Single(r => r.Variant == "w18h");
}
