using GuideGen.Diagnosis.Readings;

namespace GuideGen.Diagnosis.Tests.Readings;

public sealed class SensorTests
{
    // Source: the makers' tables, interpolated with NumPy; the curve between two rows is the beta model of that pair.
    [Theory]
    [InlineData("M", 25, 2059.19, 2103.50)]
    [InlineData("M", 22, 2311.53, 2341.40)]
    [InlineData("M", 85, 279.60, 283.00)]
    [InlineData("M", -15, 11995.90, 12429.50)]
    [InlineData("N", 25, 10000, 10000)]
    public void Table_is_read_between_its_rows(string table, double celsius, double curved, double straight)
    {
        Assert.Equal(curved, Table(table).ValueAt(celsius)!.Value, 6e-3);
        Assert.Equal(straight, Table(table, TableScale.Linear).ValueAt(celsius)!.Value, 6e-3);
    }

    // Source: as above.
    [Theory]
    [InlineData("M", 18, 2711.01)]
    [InlineData("N", 15, 14804.51)]
    [InlineData("N", 95, 1078.84)]
    public void Curve_between_rows_has_the_library_values(string table, double celsius, double ohms) =>
        Assert.Equal(ohms, Table(table).ValueAt(celsius)!.Value, 6e-3);

    // Source: as above.
    [Theory]
    [InlineData(1000, 44.626, 45.132)]
    [InlineData(300, 82.542, 82.875)]
    [InlineData(10000, -11.292, -10.994)]
    public void Temperature_is_found_from_a_resistance(double ohms, double curved, double straight)
    {
        Assert.Equal(curved, Table("M").KeyAt(ohms)!.Value, 6e-4);
        Assert.Equal(straight, Table("M", TableScale.Linear).KeyAt(ohms)!.Value, 6e-4);
    }

    // Source: a worked linear example of a maker's manual.
    [Fact]
    public void Straight_line_of_a_manual_is_reproduced()
    {
        ValueTable table = new([new(20, 12490), new(25, 10000)], TableScale.Linear);

        Assert.Equal(10996, table.ValueAt(23)!.Value, 1e-9);
    }

    [Theory]
    [InlineData(-40.1)]
    [InlineData(130.1)]
    public void Nothing_is_read_beyond_the_table(double celsius) => Assert.Null(Table("M").ValueAt(celsius));

    [Theory]
    [InlineData(45314)]
    [InlineData(88.9)]
    public void No_temperature_is_found_beyond_the_table(double ohms) => Assert.Null(Table("M").KeyAt(ohms));

    // Source: measured over both tables, each inner row left out in turn.
    [Theory]
    [InlineData("M", 0.0087, 0.165)]
    [InlineData("N", 0.0132, 0.670)]
    public void Curve_misses_a_row_left_out_far_less_than_a_straight_line(string name, double curved, double straight)
    {
        Assert.InRange(WorstMiss(name, TableScale.LogOverInverseKelvin), curved * 0.9, curved);
        Assert.InRange(WorstMiss(name, TableScale.Linear), straight * 0.9, straight);
    }

    // Source: measured as above; with ln R straight over T itself the worst row is missed by 1.8 and 6.0 per cent.
    [Theory]
    [InlineData("M", 0.018)]
    [InlineData("N", 0.060)]
    public void Inverse_kelvin_comes_closer_than_plain_temperature(string name, double plain)
    {
        var rows = SensorTables.Named(name);
        double worst = Enumerable.Range(1, rows.Length - 2).Max(i => Math.Abs(LogOverPlain(rows[i - 1], rows[i + 1], rows[i].Key) / rows[i].Value - 1));

        Assert.Equal(plain, worst, 5e-4);
        Assert.True(WorstMiss(name, TableScale.LogOverInverseKelvin) < worst / 2);

        static double LogOverPlain(TableRow low, TableRow high, double key) =>
            low.Value * Math.Pow(high.Value / low.Value, (key - low.Key) / (high.Key - low.Key));
    }

    // Source: table M; the slope of the beta model, -B/T², at 20 degrees.
    [Fact]
    public void A_kelvin_is_four_per_cent_at_room_temperature() =>
        Assert.Equal(0.0413, BetaThermistor.Through(Row("M", 20), Row("M", 100)).Beta / Math.Pow(293.15, 2), 5e-5);

    // Source: the makers' tables; B between 20 and 100 degrees (M) and between 25 and 100 (N), recomputed.
    [Theory]
    [InlineData("M", 20, 3545.48)]
    [InlineData("N", 25, 3497.05)]
    public void Beta_follows_from_two_rows(string table, double reference, double beta) => Assert.Equal(
        beta, BetaThermistor.Through(Row(table, reference), Row(table, 100)).Beta, 6e-3);

    [Fact]
    public void Beta_alone_is_two_degrees_off_far_from_its_reference() => Assert.Equal(
        2.1, BetaThermistor.Through(Row("N", 25), Row("N", 100)).CelsiusAt(71668) + 20, 0.05);

    // Source: table N; a curve through two rows has both, and half way between them in 1/T the geometric mean of their ohms.
    [Fact]
    public void Beta_gives_a_resistance_for_a_temperature()
    {
        BetaThermistor curve = BetaThermistor.Through(Row("N", 25), Row("N", 100));
        double between = 2 / ((1 / 298.15) + (1 / 373.15)) - 273.15;

        Assert.Equal(Row("N", 25).Value, curve.OhmsAt(25), 1e-9);
        Assert.Equal(Row("N", 100).Value, curve.OhmsAt(100), 1e-9);
        Assert.Equal(Math.Sqrt(Row("N", 25).Value * Row("N", 100).Value), curve.OhmsAt(between), 1e-6);
        Assert.Equal(60, curve.CelsiusAt(curve.OhmsAt(60)), 1e-9);
    }

    // Source: J. S. Steinhart, S. R. Hart 1968, Deep-Sea Res. 15:497-503, through the rows at 0, 40 and 100 degrees; errors
    // measured over the tables.
    [Theory]
    [InlineData("N", 8.676567792e-4, 2.576284832e-4, 1.452173364e-7, -20, 150, 0.045)]
    [InlineData("M", 1.284636115e-3, 2.627392970e-4, 1.455397534e-7, -20, 120, 0.255)]
    public void Three_rows_give_the_whole_curve(
        string table, double a, double b, double c, double from, double to, double worst)
    {
        SteinhartHart curve = SteinhartHart.Through(Row(table, 0), Row(table, 40), Row(table, 100));

        Assert.Equal(a, curve.A, 1e-12);
        Assert.Equal(b, curve.B, 1e-13);
        Assert.Equal(c, curve.C, 1e-16);
        Assert.InRange(
            SensorTables.Named(table).Where(r => r.Key >= from && r.Key <= to)
                .Max(r => Math.Abs(curve.CelsiusAt(r.Value) - r.Key)),
            worst * 0.8,
            worst);
    }

    // Source: the widely published coefficients of 10 kohm thermistors and their table rows.
    [Theory]
    [InlineData(10000, 25.000)]
    [InlineData(32650, 0.000)]
    [InlineData(680, 99.921)]
    public void Common_coefficients_give_the_published_rows(double ohms, double celsius)
    {
        SteinhartHart curve = new(1.129148e-3, 2.34125e-4, 8.76741e-8);

        Assert.Equal(celsius, curve.CelsiusAt(ohms), 6e-4);
        Assert.Equal(ohms, curve.OhmsAt(curve.CelsiusAt(ohms)), 1e-6 * ohms);
    }

    // Source: IEC 60751, table for 100 ohm.
    [Theory]
    [InlineData(-40, 84.2707)]
    [InlineData(0, 100)]
    [InlineData(25, 109.7347)]
    [InlineData(100, 138.5055)]
    [InlineData(200, 175.8560)]
    [InlineData(400, 247.0920)]
    [InlineData(850, 390.4811)]
    public void Platinum_follows_the_standard(double celsius, double ohms)
    {
        PlatinumSensor sensor = new(100);

        Assert.Equal(ohms, sensor.OhmsAt(celsius), 6e-5);
        Assert.Equal(celsius, sensor.CelsiusAt(sensor.OhmsAt(celsius)), 1e-8);
    }

    [Fact]
    public void Platinum_temperature_of_110_ohm_is_the_standards() =>
        Assert.Equal(25.6840, new PlatinumSensor(100).CelsiusAt(110), 6e-5);

    // IEC 60751: from -200 to 850 degrees.
    [Fact]
    public void Platinum_ends_where_the_standard_does()
    {
        PlatinumSensor sensor = new(100);

        Assert.Throws<ArgumentOutOfRangeException>(() => sensor.OhmsAt(-200.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => sensor.OhmsAt(850.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => sensor.CelsiusAt(18.5));
        Assert.Equal(-200, sensor.CelsiusAt(sensor.OhmsAt(-200)), 1e-8);
    }

    // Source: table M; 2 degrees either way at 20 allow 2312 to 2711 ohm.
    [Fact]
    public void Uncertain_temperature_widens_the_limits()
    {
        LimitTable table = new([.. SensorTables.M.Select(r => new LimitRow(r.Key, r.Value, r.Value))], TableScale.LogOverInverseKelvin);
        Limits limits = table.At(20, 2)!.Value;

        Assert.Equal(2312, limits.Low!.Value, 0.5);
        Assert.Equal(2711, limits.High!.Value, 0.5);
        Assert.Equal(new Limits(2500, 2500), table.At(20));
        Assert.Null(table.At(129, 2));
        Assert.Null(table.At(-39, 2));
    }

    [Fact]
    public void Peak_of_a_table_inside_the_uncertainty_counts()
    {
        LimitTable table = new([new(0, 1, 2), new(10, 0.5, 9), new(20, 1, 2)], TableScale.Linear);

        Assert.Equal(new Limits(0.5, 9), table.At(11, 4));
    }

    [Fact]
    public void Uncertainty_is_not_negative()
    {
        LimitTable table = new([new(0, 1, 2), new(10, 0.5, 9)], TableScale.Linear);

        Assert.Throws<ArgumentOutOfRangeException>(() => table.At(5, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guard.Judge(1, new(0, 2), -0.1));
    }

    [Fact]
    public void Value_without_a_logarithm_is_refused() =>
        Assert.Throws<ArgumentException>(() => new ValueTable([new(5, 0), new(6, 1)], TableScale.LogOverInverseKelvin));

    [Theory]
    [InlineData(new double[] { }, TableScale.Linear)]
    [InlineData(new double[] { 5, 5 }, TableScale.Linear)]
    [InlineData(new double[] { 5, 6, 6 }, TableScale.Linear)]
    [InlineData(new double[] { -273.15, 5 }, TableScale.LogOverInverseKelvin)]
    [InlineData(new double[] { -300, 5 }, TableScale.LogOverInverseKelvin)]
    public void Table_that_cannot_be_read_is_refused(double[] keys, TableScale scale) =>
        Assert.Throws<ArgumentException>(() => new ValueTable(keys.Select(k => new TableRow(k, 1)), scale));

    static ValueTable Table(string name, TableScale scale = TableScale.LogOverInverseKelvin) =>
        new(SensorTables.Named(name), scale);

    static TableRow Row(string table, double celsius) => SensorTables.Named(table).Single(r => r.Key == celsius);

    static double WorstMiss(string name, TableScale scale)
    {
        TableRow[] rows = SensorTables.Named(name);
        return rows[1..^1].Max(left =>
            Math.Abs(new ValueTable(rows.Where(r => r != left), scale).ValueAt(left.Key)!.Value / left.Value - 1));
    }
}
