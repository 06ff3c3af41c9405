using CsCheck;
using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class IntervalPropertyTests
{
    static readonly Gen<Proportion> Reports =
        from n in Gen.Int[1, 400] from x in Gen.Int[0, n] select new Proportion(x, n);

    static readonly Gen<(Proportion Reports, IntervalMethod Method)> Cases =
        Gen.Select(Reports, Gen.Enum<IntervalMethod>());

    [Fact]
    public void Intervals_contain_the_share_and_stay_within_0_and_1() => Cases.Sample(c =>
    {
        Interval interval = c.Reports.Interval(0.95, c.Method)!.Value;

        Assert.True(interval.Contains(c.Reports.Share!.Value));
        Assert.InRange(interval.Low, 0, 1);
        Assert.InRange(interval.High, 0, 1);
    });

    [Fact]
    public void Intervals_mirror() => Cases.Sample(c =>
    {
        Interval interval = c.Reports.Interval(0.95, c.Method)!.Value;
        Proportion others = new(c.Reports.Total - c.Reports.Count, c.Reports.Total);
        Interval mirrored = others.Interval(0.95, c.Method)!.Value;

        Assert.Equal(interval.Low, 1 - mirrored.High, 1e-9);
        Assert.Equal(interval.High, 1 - mirrored.Low, 1e-9);
    });

    [Fact]
    public void Intervals_narrow_with_more_reports_of_the_same_share() => Cases.Sample(c =>
    {
        Proportion doubled = new(2 * c.Reports.Count, 2 * c.Reports.Total);

        Assert.True(doubled.Interval(0.95, c.Method)!.Value.Width < c.Reports.Interval(0.95, c.Method)!.Value.Width);
    });

    [Fact]
    public void One_more_hit_never_lowers_a_limit() => Cases.Where(c => c.Reports.Count < c.Reports.Total).Sample(c =>
    {
        Interval interval = c.Reports.Interval(0.95, c.Method)!.Value;
        Interval more = new Proportion(c.Reports.Count + 1, c.Reports.Total).Interval(0.95, c.Method)!.Value;

        Assert.True(more.Low >= interval.Low - 1e-12 && more.High >= interval.High - 1e-12);
    });

    [Fact]
    public void More_confidence_is_never_narrower() => Cases.Sample(c =>
        c.Reports.Interval(0.99, c.Method)!.Value.Width >= c.Reports.Interval(0.80, c.Method)!.Value.Width);

    [Fact]
    public void Exact_interval_covers_at_least_what_it_says() =>
        Gen.Select(Gen.Int[1, 40], Gen.Double[0.02, 0.98]).Sample((n, p) => Coverage(n, p) >= 0.95 - 1e-9);

    // Source: L. D. Brown, T. T. Cai, A. DasGupta 2001, Statist. Sci. 16:101-133: averaged over shares, both cover about
    // what they say even with few reports. Summed exactly over all outcomes, 199 shares.
    [Theory]
    [InlineData(IntervalMethod.Wilson, 10, 0.95)]
    [InlineData(IntervalMethod.Wilson, 20, 0.95)]
    [InlineData(IntervalMethod.Wilson, 50, 0.95)]
    [InlineData(IntervalMethod.Jeffreys, 10, 0.95)]
    [InlineData(IntervalMethod.Jeffreys, 20, 0.95)]
    [InlineData(IntervalMethod.Jeffreys, 50, 0.95)]
    [InlineData(IntervalMethod.Wilson, 10, 0.80)]
    [InlineData(IntervalMethod.Wilson, 20, 0.80)]
    [InlineData(IntervalMethod.Wilson, 50, 0.80)]
    [InlineData(IntervalMethod.Jeffreys, 10, 0.80)]
    [InlineData(IntervalMethod.Jeffreys, 20, 0.80)]
    [InlineData(IntervalMethod.Jeffreys, 50, 0.80)]
    public void Mean_coverage_is_within_a_point_and_a_half_of_what_is_said(IntervalMethod method, int n, double said) =>
        Assert.Equal(said, Enumerable.Range(1, 199).Average(i => Coverage(n, i / 200.0, method, said)), 0.015);

    static double Coverage(int n, double p, IntervalMethod method = IntervalMethod.Exact, double said = 0.95) => Enumerable.Range(0, n + 1)
        .Where(x => new Proportion(x, n).Interval(said, method)!.Value.Contains(p))
        .Sum(x => MathNet.Numerics.Distributions.Binomial.PMF(p, n, x));
}
