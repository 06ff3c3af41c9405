using System.Globalization;
using GuideGen.Guide.Model;
using GuideGen.Site.Measuring;

namespace GuideGen.Site.Tests.Measuring;

/// <summary>Factors against NIST SP 811 (A. Thompson, B. Taylor 2008), appendix B, from memory, to three in a million: no closer is UnitsNet for lb/min.</summary>
public sealed class UnitTableTests
{
    [Theory]
    [InlineData("pressure", "psi", "kPa", 1, 6.894757)]
    [InlineData("pressure", "bar", "kPa", 1, 100)]
    [InlineData("pressure", "mbar", "kPa", 1, 0.1)]
    [InlineData("pressure", "mmHg", "kPa", 1, 0.1333224)]
    [InlineData("pressure", "inHg", "kPa", 1, 3.386389)]
    [InlineData("pressure", "psi", "bar", 22, 1.516847)]
    [InlineData("torque", "lbf-ft", "Nm", 1, 1.355818)]
    [InlineData("torque", "lbf-in", "Nm", 1, 0.1129848)]
    [InlineData("torque", "Nm", "lbf-ft", 23, 16.9639)]
    [InlineData("length", "in", "mm", 1, 25.4)]
    [InlineData("temperature", "degF", "degC", 212, 100)]
    [InlineData("temperature", "degF", "degC", -40, -40)]
    [InlineData("temperature", "degC", "degF", 90, 194)]
    [InlineData("mass-flow", "lb/min", "kg/h", 1, 27.21554)]
    [InlineData("mass-flow", "kg/h", "g/s", 3.6, 1)]
    [InlineData("volume", "us-fl-oz", "ml", 1, 29.57353)]
    [InlineData("volume", "us-qt", "l", 1, 0.946353)]
    [InlineData("volume", "imp-pt", "ml", 1, 568.26125)]
    [InlineData("resistance", "kohm", "ohm", 2.5, 2500)]
    public void A_factor_is_the_handbooks(string quantity, string from, string to, double value, double expected)
    {
        var converted = UnitTable.Convert(value, UnitTable.Find(quantity, from), UnitTable.Find(quantity, to));

        Assert.InRange(converted, expected - (3e-6 * Math.Abs(expected)) - 1e-9, expected + (3e-6 * Math.Abs(expected)) + 1e-9);
    }

    // A difference of 18 degrees Fahrenheit is one of 10 degrees Celsius (NIST SP 811, 4.2.1.1).
    [Fact]
    public void A_difference_is_not_moved_by_an_offset() =>
        Assert.Equal(10, UnitTable.Convert(18, UnitTable.Find("temperature", "degF"), UnitTable.Find("temperature", "degC"), difference: true), 9);

    [Fact]
    public void Every_unit_that_an_author_may_write_can_be_converted() =>
        Assert.All(Quantities.Units, q => Assert.All(q.Value, unit => Assert.Contains(UnitTable.Units(q.Key), u => u.Key == unit)));

    [Theory]
    [InlineData("pressure", "bar", UnitSystem.Metric, "bar,psi")]
    [InlineData("pressure", "bar", UnitSystem.Imperial, "psi,bar")]
    [InlineData("pressure", "psi", UnitSystem.Metric, "bar,psi")]
    [InlineData("voltage", "V", UnitSystem.Imperial, "V")]
    public void The_guides_own_system_stands_first(string quantity, string unit, UnitSystem first, string shown) =>
        Assert.Equal(shown, string.Join(',', UnitTable.Shown(quantity, unit, first).Select(u => u.Key)));

    [Theory]
    [InlineData(17.4045, "17.4")]
    [InlineData(1040.6, "1041")]
    [InlineData(0.011811, "0.0118")]
    [InlineData(-14.5038, "-14.5")]
    [InlineData(0, "0")]
    public void A_converted_value_keeps_three_digits(double value, string shown) => Assert.Equal(shown, ReadingLimits.Rounded(value, CultureInfo.InvariantCulture));
}
