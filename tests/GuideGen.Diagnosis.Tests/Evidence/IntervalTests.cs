using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class IntervalTests
{
    // Source: R. G. Newcombe 1998, Stat. Med. 17:857-872, Table I, methods 3, 4 and 5 (four digits; three of the four rows
    // from memory); recomputed with R 4.2.2 prop.test and statsmodels 0.13.5.
    [Theory]
    [InlineData(IntervalMethod.Wilson, 81, 263, 0.2553, 0.3662)]
    [InlineData(IntervalMethod.Wilson, 15, 148, 0.0624, 0.1605)]
    [InlineData(IntervalMethod.Wilson, 0, 20, 0, 0.1611)]
    [InlineData(IntervalMethod.Wilson, 1, 29, 0.0061, 0.1718)]
    [InlineData(IntervalMethod.WilsonCorrected, 81, 263, 0.2535, 0.3682)]
    [InlineData(IntervalMethod.WilsonCorrected, 15, 148, 0.0598, 0.1644)]
    [InlineData(IntervalMethod.WilsonCorrected, 0, 20, 0, 0.2005)]
    [InlineData(IntervalMethod.WilsonCorrected, 1, 29, 0.0018, 0.1963)]
    [InlineData(IntervalMethod.Exact, 81, 263, 0.2527, 0.3676)]
    [InlineData(IntervalMethod.Exact, 15, 148, 0.0578, 0.1617)]
    [InlineData(IntervalMethod.Exact, 0, 20, 0, 0.1684)]
    [InlineData(IntervalMethod.Exact, 1, 29, 0.0009, 0.1776)]
    public void Newcombes_four_cases_are_met(IntervalMethod method, int x, int n, double low, double high) =>
        Check(new Proportion(x, n).Interval(0.95, method), low, high, 5.1e-5);

    // Source: R 4.2.2 prop.test(correct = FALSE) and statsmodels 0.13.5, six digits.
    [Theory]
    [InlineData(81, 263, 0.255289, 0.366210)]
    [InlineData(15, 148, 0.062386, 0.160487)]
    [InlineData(0, 20, 0, 0.161125)]
    [InlineData(1, 29, 0.006113, 0.171755)]
    [InlineData(0, 1, 0, 0.793451)]
    [InlineData(1, 1, 0.206549, 1)]
    [InlineData(0, 3, 0, 0.561497)]
    [InlineData(1, 3, 0.061492, 0.792340)]
    [InlineData(2, 3, 0.207660, 0.938508)]
    [InlineData(3, 3, 0.438503, 1)]
    [InlineData(4, 5, 0.375535, 0.963776)]
    [InlineData(5, 5, 0.565518, 1)]
    [InlineData(2, 7, 0.082219, 0.641066)]
    [InlineData(7, 10, 0.396778, 0.892209)]
    [InlineData(8, 10, 0.490162, 0.943318)]
    [InlineData(9, 12, 0.467695, 0.911058)]
    [InlineData(3, 20, 0.052369, 0.360419)]
    [InlineData(41, 60, 0.557662, 0.786941)]
    public void Wilson_interval_agrees_with_libraries(int x, int n, double low, double high) =>
        Check(new Proportion(x, n).Interval(), low, high, 6e-7);

    // Source: R 4.2.2 qbeta, SciPy 1.10.1, statsmodels 0.13.5 and MathNet.Numerics 5.0.0, six digits; the ends 0 and 1 by
    // the definition of L. D. Brown, T. T. Cai, A. DasGupta 2001, Statist. Sci. 16:101-133.
    [Theory]
    [InlineData(81, 263, 0.254522, 0.365647)]
    [InlineData(15, 148, 0.060449, 0.157643)]
    [InlineData(0, 20, 0, 0.116639)]
    [InlineData(1, 29, 0.003746, 0.150078)]
    [InlineData(0, 1, 0, 0.853254)]
    [InlineData(1, 1, 0.146746, 1)]
    [InlineData(0, 3, 0, 0.535583)]
    [InlineData(1, 3, 0.038748, 0.823264)]
    [InlineData(2, 3, 0.176736, 0.961252)]
    [InlineData(3, 3, 0.464417, 1)]
    [InlineData(4, 5, 0.371374, 0.977487)]
    [InlineData(5, 5, 0.620623, 1)]
    [InlineData(2, 7, 0.064728, 0.647662)]
    [InlineData(7, 10, 0.394182, 0.907305)]
    [InlineData(8, 10, 0.497226, 0.955941)]
    [InlineData(9, 12, 0.470809, 0.924058)]
    [InlineData(3, 20, 0.044131, 0.348578)]
    [InlineData(41, 60, 0.559158, 0.790298)]
    public void Jeffreys_interval_agrees_with_libraries(int x, int n, double low, double high) =>
        Check(new Proportion(x, n).Interval(0.95, IntervalMethod.Jeffreys), low, high, 6e-7);

    // Source: NIST/SEMATECH e-Handbook of Statistical Methods 7.2.4.1, 4 defectives of 20 at 90 % (exact limits from
    // memory); R 4.2.2 for the other two methods.
    [Theory]
    [InlineData(IntervalMethod.Exact, 0.071354, 0.401029)]
    [InlineData(IntervalMethod.Wilson, 0.093118, 0.378377)]
    [InlineData(IntervalMethod.Jeffreys, 0.087335, 0.372739)]
    public void Handbook_example_is_met(IntervalMethod method, double low, double high) =>
        Check(new Proportion(4, 20).Interval(0.90, method), low, high, 2e-6);

    // Source: closed form 1 - 0.025^(1/n) of the exact upper limit without a hit, which L. D. Brown, T. T. Cai, A. DasGupta 2001
    // take for their modified Jeffreys interval as well.
    [Theory]
    [InlineData(7, 0.409616)]
    [InlineData(10, 0.308497)]
    [InlineData(20, 0.168433)]
    public void Exact_limit_without_a_hit_is_the_closed_form(int n, double high) =>
        Check(new Proportion(0, n).Interval(0.95, IntervalMethod.Exact), 0, high, 6e-7);

    // Source: R 4.2.2.
    [Theory]
    [InlineData(IntervalMethod.Wilson, 0.497372, 0.846201)]
    [InlineData(IntervalMethod.Jeffreys, 0.498219, 0.849409)]
    public void Eighty_per_cent_agrees_with_libraries(IntervalMethod method, double low, double high) =>
        Check(new Proportion(7, 10).Interval(0.80, method), low, high, 6e-7);

    // Source: R 4.2.2, half the width at p = 1/2.
    [Theory]
    [InlineData(10, 0.263)]
    [InlineData(20, 0.201)]
    [InlineData(50, 0.134)]
    [InlineData(100, 0.096)]
    [InlineData(200, 0.069)]
    public void Half_width_shrinks_with_reports_as_tabled(int n, double half) =>
        Assert.Equal(half, new Proportion(n / 2, n).Interval()!.Value.Width / 2, 5e-4);

    [Fact]
    public void No_reports_have_no_interval()
    {
        Assert.Null(new Proportion(0, 0).Interval());
        Assert.Null(new Proportion(0, 0).Share);
    }

    [Fact]
    public void Lower_limit_puts_many_good_reports_before_a_single_one()
    {
        Proportion[] sorted = [new(1, 1), new(3, 3), new(9, 12), new(41, 60)];

        Assert.Equal(sorted, sorted.OrderBy(p => p.Interval()!.Value.Low));
    }

    [Theory]
    [InlineData(-1, 3)]
    [InlineData(4, 3)]
    public void Impossible_counts_are_refused(int x, int n) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Proportion(x, n));

    // Source: R. G. Newcombe 1998, Stat. Med. 17:873-890, method 10 (first row); statsmodels 0.13.5 (second row).
    [Theory]
    [InlineData(56, 70, 48, 80, 0.0524, 0.3339)]
    [InlineData(9, 10, 3, 10, 0.1705, 0.8090)]
    public void Difference_of_two_groups_is_met(int x, int n, int y, int m, double low, double high) =>
        Check(Difference.Between(new(x, n), new(y, m)), low, high, 5.1e-5);

    [Fact]
    public void Difference_to_a_group_without_reports_is_unknown() =>
        Assert.Null(Difference.Between(new(3, 4), new(0, 0)));

    static void Check(Interval? actual, double low, double high, double tolerance)
    {
        Assert.NotNull(actual);
        Assert.Equal(low, actual.Value.Low, tolerance);
        Assert.Equal(high, actual.Value.High, tolerance);
    }
}
