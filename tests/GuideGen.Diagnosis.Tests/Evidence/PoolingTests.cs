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
