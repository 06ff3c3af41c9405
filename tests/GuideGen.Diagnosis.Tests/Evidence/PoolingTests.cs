using CsCheck;
using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class PoolingTests
{
    // A hose with 15 of 20, opinion and cases together, and a sensor with the rest.
    static double[] Shares(int hose, int sensor, params bool[] possible) =>
        [.. Pooling.ForVariant([15, 5], 8, [hose, sensor], possible is [] ? [true, true] : possible)];

    [Fact]
    public void Variant_without_cases_takes_over_the_whole() => Assert.Equal([0.75, 0.25], Shares(0, 0));

    // Arithmetic: (8 * 0.75 + 1) / (8 + 4).
    [Fact]
    public void Variant_with_few_cases_lies_between_its_own_and_the_whole() => Assert.Equal(7.0 / 12, Shares(1, 3)[0], 1e-12);

    [Fact]
    public void Part_that_a_variant_lacks_has_no_share_and_leaves_it_to_the_others() => Assert.Equal([1, 0], Shares(0, 0, true, false));

    [Fact]
    public void Shares_are_0_where_nobody_has_an_opinion_or_a_case() =>
        Assert.Equal([0.0, 0.0], Pooling.ForVariant([0, 0], 8, [0, 0], [true, true]));

    [Fact]
    public void Own_cases_alone_make_the_shares_where_the_whole_has_none() =>
        Assert.Equal([0.25, 0.75], Pooling.ForVariant([0, 0], 8, [1, 3], [true, true]));

    // By definition: each case is taken out, and the log of the share that the others give its cause is summed.
    [Fact]
    public void Worth_is_the_one_under_which_the_others_foretell_each_case_best() =>
        Gen.Select(Gen.Double[0, 4].Array[3], Gen.Int[0, 7].Array[3].Array[1, 4]).Sample((belief, variants) =>
        {
            var beliefs = belief.Select((b, c) => (b, c)).ToDictionary(b => $"c{b.c}", b => b.b);
            double chosen = Pooling.ChooseWorth(beliefs, [.. variants.Select(v => v.Select((n, c) => (n, c)).ToDictionary(n => $"c{n.c}", n => n.n))]);

            double Score(double worth)
            {
                double score = 0;
                for (int v = 0; v < variants.Length; v++)
                {
                    for (int c = 0; c < 3; c++)
                    {
                        double whole = belief.Sum() + variants.Sum(x => x.Sum()) - 1, ofCause = belief[c] + variants.Sum(x => x[c]) - 1;
                        double parent = whole > 0 ? ofCause / whole : 0;
                        double foretold = ((worth * parent) + variants[v][c] - 1) / (worth + variants[v].Sum() - 1);
                        score += variants[v][c] == 0 ? 0 : variants[v][c] * Math.Log(Math.Max(1e-12, foretold));
                    }
                }

                return score;
            }

            double best = Enumerable.Range(0, 11).Select(k => Score(1 << k)).Max();
            Assert.Equal(best, Score(chosen), 1e-9);
            Assert.All(Enumerable.Range(0, 11).Where(k => 1 << k > chosen), k => Assert.True(Score(1 << k) < best));
        });

    [Fact]
    public void Variants_alike_are_pooled_and_variants_unlike_are_not()
    {
        Dictionary<string, double> belief = new() { ["hose"] = 1, ["sensor"] = 1 };

        double alike = Pooling.ChooseWorth(belief, [Cases(6, 2), Cases(6, 2), Cases(6, 2)]);
        double unlike = Pooling.ChooseWorth(belief, [Cases(12, 0), Cases(0, 12), Cases(6, 6)]);

        Assert.Equal(1024, alike);
        Assert.Equal(1, unlike);
    }

    [Fact]
    public void Without_cases_everything_is_pooled() =>
        Assert.Equal(1024, Pooling.ChooseWorth(new Dictionary<string, double> { ["hose"] = 1 }, []));

    static Dictionary<string, int> Cases(int hose, int sensor) => new() { ["hose"] = hose, ["sensor"] = sensor };
}
