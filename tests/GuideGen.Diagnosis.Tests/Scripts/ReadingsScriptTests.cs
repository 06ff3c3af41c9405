using CsCheck;
using GuideGen.Diagnosis.Readings;
using GuideGen.Diagnosis.Tests.Readings;
using GuideGen.Testing;

namespace GuideGen.Diagnosis.Tests.Scripts;

/// <summary>The browser judges a reading as the build does.</summary>
public sealed class ReadingsScriptTests : IDisposable
{
    readonly BrowserScript script = new("readings.js");

    public void Dispose() => script.Dispose();

    // Source: the makers' tables, as in the tests of the build.
    [Theory]
    [InlineData("M", 25, 2059.19)]
    [InlineData("M", -15, 11995.90)]
    [InlineData("N", 95, 1078.84)]
    public void Table_values_are_the_published_ones(string table, double celsius, double ohms) => Assert.Equal(
        ohms,
        script.Call<double>("readings.valueAt", SensorTables.Named(table), TableScale.LogOverInverseKelvin, celsius),
        6e-3);

    [Fact]
    public void Tables_are_read_alike_on_both_sides() =>
        Gen.Select(Gen.Enum<TableScale>(), Gen.Double[-50, 140]).Sample(
            (scale, celsius) => Alike(
                new ValueTable(SensorTables.M, scale).ValueAt(celsius),
                script.Call<double?>("readings.valueAt", SensorTables.M, scale, celsius)),
            iter: Tries.Of(200),
            threads: 1);

    [Fact]
    public void Limits_are_found_alike_on_both_sides() =>
        Gen.Select(Gen.Enum<TableScale>(), Gen.Double[-45, 135], Gen.Double[0, 12]).Sample(
            (scale, celsius, uncertainty) =>
            {
                LimitRow[] rows = [.. SensorTables.M.Select(r => new LimitRow(r.Key, r.Value * 0.9, r.Value * 1.1))];
                Limits? build = new LimitTable([.. rows], scale).At(celsius, uncertainty);
                Limits? browser = script.Call<Limits?>("readings.limitsAt", rows, scale, celsius, uncertainty);

                Alike(build?.Low, browser?.Low);
                Alike(build?.High, browser?.High);
            },
            iter: Tries.Of(200),
            threads: 1);

    [Fact]
    public void Readings_are_judged_alike_on_both_sides() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[2, 4].Nullable(), Gen.Double[4, 6].Nullable(), Gen.Double[0, 1.5]).Sample(
            (value, low, high, uncertainty) => Assert.Equal(
                Guard.Judge(value, new(low, high), uncertainty),
                script.Call<Verdict>("readings.judge", value, new Limits(low, high), uncertainty)),
            iter: Tries.Of(300),
            threads: 1);

    [Theory]
    [InlineData(2.2945, Verdict.Pass)]
    [InlineData(2.28, Verdict.TooClose)]
    [InlineData(2.2654, Verdict.TooLow)]
    [InlineData(2.74, Verdict.TooHigh)]
    public void Reading_near_a_limit_is_neither_good_nor_bad(double value, Verdict verdict) =>
        Assert.Equal(verdict, script.Call<Verdict>("readings.judge", value, new Limits(2.28, 2.72), 0.0145));

    [Fact]
    public void Meter_and_air_are_computed_alike_on_both_sides() =>
        Gen.Select(Gen.Double[-500, 4000], Gen.Double[-900, 900], Gen.Double[0, 3]).Sample(
            (metres, reading, percent) =>
            {
                Alike(Atmosphere.PressureAt(metres), script.Call<double>("readings.pressureAt", metres));
                Alike(Atmosphere.Absolute(reading, 95.4), script.Call<double>("readings.absolute", reading, 95.4));
                Alike(Atmosphere.Gauge(reading, 95.4), script.Call<double>("readings.gauge", reading, 95.4));
                Alike(
                    new MeterAccuracy(percent, 2, 0.01).Uncertainty(reading),
                    script.Call<double>("readings.meterUncertainty", reading, percent, 2, 0.01));
            },
            iter: Tries.Of(100),
            threads: 1);

    static void Alike(double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is { } e)
            Assert.InRange(Math.Abs(e - actual!.Value), 0, 1e-9 * Math.Max(1, Math.Abs(e)));
    }
}
