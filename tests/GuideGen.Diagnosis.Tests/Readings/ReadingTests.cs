using GuideGen.Diagnosis.Readings;

namespace GuideGen.Diagnosis.Tests.Readings;

public sealed class ReadingTests
{
    // Source: ISO 2533:1975, standard atmosphere; recomputed with GNU units 2.22.
    [Theory]
    [InlineData(0, 101.325)]
    [InlineData(500, 95.461)]
    [InlineData(1000, 89.875)]
    [InlineData(1500, 84.556)]
    [InlineData(2000, 79.495)]
    [InlineData(3000, 70.109)]
    public void Air_pressure_falls_with_height_as_in_the_standard(double metres, double kilopascals) =>
        Assert.Equal(kilopascals, Atmosphere.PressureAt(metres), 6e-4);

    [Theory]
    [InlineData(-1001)]
    [InlineData(11001)]
    public void Heights_outside_the_formula_are_refused(double metres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Atmosphere.PressureAt(metres));

    // Source: arithmetic with ISO 2533:1975; 1 inHg = 3.386389 kPa (NIST SP 811, Appendix B, from memory).
    [Fact]
    public void Gauge_vacuum_and_absolute_pressure_meet_at_the_airs_own()
    {
        double sea = Atmosphere.PressureAt(0), high = Atmosphere.PressureAt(1500), vacuum = 18 * 3.386389;

        Assert.Equal(311.325, Atmosphere.Absolute(210, sea), 6e-4);
        Assert.Equal(294.556, Atmosphere.Absolute(210, high), 6e-4);
        Assert.Equal(115.44, Atmosphere.Gauge(200, high), 6e-3);
        Assert.Equal(40.3700, Atmosphere.AbsoluteOfVacuum(vacuum, sea), 6e-5);
        Assert.Equal(23.6010, Atmosphere.AbsoluteOfVacuum(vacuum, high), 2e-4);
    }

    // Source: arithmetic of a meter of 0.5 % and 2 digits at 2.500 kohm; guard bands of JCGM 106:2012.
    [Fact]
    public void Guard_band_narrows_what_is_accepted_by_the_meters_error()
    {
        double uncertainty = new MeterAccuracy(0.5, 2, 0.001).Uncertainty(2.5);
        Limits accepted = Guard.Acceptance(new(2.28, 2.72), uncertainty)!.Value;

        Assert.Equal(0.0145, uncertainty, 1e-12);
        Assert.Equal(2.2945, accepted.Low!.Value, 1e-12);
        Assert.Equal(2.7055, accepted.High!.Value, 1e-12);
    }

    [Theory]
    [InlineData(2.50, Verdict.Pass)]
    [InlineData(2.2945, Verdict.Pass)]
    [InlineData(2.2944, Verdict.TooClose)]
    [InlineData(2.28, Verdict.TooClose)]
    [InlineData(2.2656, Verdict.TooClose)]
    [InlineData(2.2654, Verdict.TooLow)]
    [InlineData(2.71, Verdict.TooClose)]
    [InlineData(2.74, Verdict.TooHigh)]
    public void Reading_near_a_limit_is_neither_good_nor_bad(double value, Verdict verdict) =>
        Assert.Equal(verdict, Guard.Judge(value, new(2.28, 2.72), 0.0145));

    // Halves, which are exact: the guard band's own ends belong to it.
    [Theory]
    [InlineData(1.5, Verdict.TooClose)]
    [InlineData(2.5, Verdict.Pass)]
    [InlineData(3.5, Verdict.Pass)]
    [InlineData(4.5, Verdict.TooClose)]
    public void A_reading_on_the_edge_of_the_guard_band_is_not_out_of_limits(double value, Verdict verdict) =>
        Assert.Equal(verdict, Guard.Judge(value, new(2, 4), 0.5));

    [Fact]
    public void A_meter_that_leaves_one_value_can_pass_it() => Assert.Equal(new Limits(2.5, 2.5), Guard.Acceptance(new(2, 3), 0.5));

    [Theory]
    [InlineData(0.3, Verdict.Pass)]
    [InlineData(-900, Verdict.Pass)]
    [InlineData(0.52, Verdict.TooHigh)]
    public void Open_limit_is_never_broken(double value, Verdict verdict) =>
        Assert.Equal(verdict, Guard.Judge(value, new(null, 0.5), 0.01));

    [Fact]
    public void Meter_too_coarse_for_the_limits_can_pass_nothing()
    {
        Limits limits = new(1.0, 1.1);

        Assert.Null(Guard.Acceptance(limits, 0.06));
        Assert.Equal(Verdict.TooClose, Guard.Judge(1.05, limits, 0.06));
        Assert.Equal(Verdict.TooLow, Guard.Judge(0.9, limits, 0.06));
    }
}
