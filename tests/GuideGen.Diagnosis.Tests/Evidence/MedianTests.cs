using CsCheck;
using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class MedianTests
{
    // Source: SciPy 1.10.1, 1 - 2 binom.cdf(r - 1, n, 1/2); method of G. J. Hahn, W. Q. Meeker 1991, Statistical Intervals.
    [Theory]
    [InlineData(5, 1, 0.937500)]
    [InlineData(6, 1, 0.968750)]
    [InlineData(8, 2, 0.929688)]
    [InlineData(9, 2, 0.960938)]
    [InlineData(10, 2, 0.978516)]
    [InlineData(10, 3, 0.890625)]
    [InlineData(12, 3, 0.961426)]
    [InlineData(15, 4, 0.964844)]
    [InlineData(20, 6, 0.958611)]
    public void Coverage_between_two_sorted_values_agrees_with_the_library(int n, int rank, double coverage) =>
        Assert.Equal(coverage, MedianOfReports.CoverageOf(n, rank), 6e-7);

    // Source: the same table; the innermost pair that reaches 95 %, or the outermost where none does.
    [Theory]
    [InlineData(5, 1, 5)]
    [InlineData(6, 1, 6)]
    [InlineData(9, 2, 8)]
    [InlineData(10, 2, 9)]
    [InlineData(12, 3, 10)]
    [InlineData(15, 4, 12)]
    [InlineData(20, 6, 15)]
    public void Interval_takes_the_innermost_pair_that_reaches_95_per_cent(int n, int low, int high)
    {
        MedianOfReports median = MedianOfReports.Of(Enumerable.Range(1, n).Reverse().Select(v => (double)v))!;

        Assert.Equal(new Interval(low, high), median.Interval);
        Assert.Equal((n + 1) / 2.0, median.Median);
    }

    // 0.246 of ten values' coverage is left between the two in the middle, and 0 of eleven's.
    [Theory]
    [InlineData(10, 5, 6)]
    [InlineData(11, 5, 7)]
    public void Interval_for_little_confidence_ends_in_the_middle(int n, int low, int high) =>
        Assert.Equal(new Interval(low, high), MedianOfReports.Of(Enumerable.Range(1, n).Select(v => (double)v), 0.1)!.Interval);

    [Fact]
    public void Fewer_than_five_reports_are_listed_without_an_interval()
    {
        MedianOfReports median = MedianOfReports.Of([40, 25, 90, 60])!;

        Assert.Equal([25, 40, 60, 90], median.Values);
        Assert.Equal(50, median.Median);
        Assert.Null(median.Interval);
    }

    [Fact]
    public void No_reports_have_no_median() => Assert.Null(MedianOfReports.Of([]));

    [Fact]
    public void Interval_holds_the_median_and_the_order_of_reports_is_nothing() =>
        Gen.Double[0, 500].Array[5, 60].Sample(values =>
        {
            MedianOfReports median = MedianOfReports.Of(values)!;

            Assert.True(median.Interval!.Value.Contains(median.Median));
            Assert.Equal(median.Interval, MedianOfReports.Of(values.Reverse())!.Interval);
        });
}
