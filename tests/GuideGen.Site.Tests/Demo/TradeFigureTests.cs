using GuideGen.Guide.Model;

namespace GuideGen.Site.Tests.Demo;

/// <summary>
/// The figures of the trade in the demo guide agree with a table that names where each comes from, and with each other.
/// </summary>
public sealed class TradeFigureTests
{
    const char WithinMark = '~';

    public static TheoryData<string> Figures => [.. TradeTable.Under("Figures").Select(r => r["figure"])];

    public static TheoryData<string> Everywhere => [.. TradeTable.Under("The same everywhere").Select(r => r["words"])];

    public static TheoryData<string, string> Curves => [.. TradeTable.Under("Sensor tables").Select(r => (r["check > reading"], r["at"]))];

    [Theory, MemberData(nameof(Figures))]
    public void A_figure_is_the_same_wherever_the_table_says_it_stands(string figure)
    {
        var row = TradeTable.Under("Figures").Single(r => r["figure"] == figure);

        Assert.All(row["where"].Split("; "), place =>
        {
            if (place.Contains('"', StringComparison.Ordinal)) AssertPhrase(row, place);
            else AssertReading(row, DemoText.ReadingAt(place));
        });
    }

    [Fact]
    public void The_table_has_forty_figures_and_says_of_each_where_it_comes_from()
    {
        var figures = TradeTable.Under("Figures");

        Assert.InRange(figures.Length, 40, 400);
        Assert.All(figures, row => Assert.True(row["source"].Length > 3 && row.Low <= row.High, row["figure"]));
    }

    [Theory, MemberData(nameof(Everywhere))]
    public void A_figure_is_the_same_in_every_sentence_of_the_guide_that_speaks_of_it(string words)
    {
        var row = TradeTable.Under("The same everywhere").Single(r => r["words"] == words);
        var all = words.Split(", ");

        var found =
            (from page in DemoText.Pages
             from sentence in DemoText.SentencesOf(page.Value)
             where all.All(w => sentence.Contains(w, StringComparison.OrdinalIgnoreCase))
             from number in DemoText.Numbers(sentence, row["unit"])
             select (page.Key, sentence, number)).ToList();

        Assert.All(found, f => Assert.True(f.number.Low >= row.Low && f.number.High <= row.High, $"{f.Key}: {f.sentence}"));
        Assert.True(found.Select(f => f.Key).Distinct().Count() >= row.Number("pages"), string.Join(", ", found.Select(f => f.Key).Distinct()));
    }

    [Theory, MemberData(nameof(Curves))]
    public void A_published_value_lies_within_the_limits_of_a_sensor_table(string place, string at)
    {
        var row = TradeTable.Under("Sensor tables").Single(r => r["check > reading"] == place && r["at"] == at);

        var limits = DemoText.ReadingAt(place).Over!.Rows.Single(r => r.X.Equals(row.Number("at")));

        Assert.InRange(row.Number("published"), limits.Low, limits.High);
    }

    [Fact]
    public void Readings_of_the_same_name_have_the_same_limits()
    {
        var differing =
            from reading in DemoText.Readings
            group reading by (reading.Reading.Name.Value, reading.Reading.Unit.Value) into same
            where same.Select(s => (s.Reading.Low?.Value, s.Reading.High?.Value)).Distinct().Count() > 1
            select $"{same.Key}: {string.Join(", ", same.Select(s => s.Check))}";

        Assert.Empty(differing);
        Assert.Contains(DemoText.Readings.GroupBy(r => r.Reading.Name.Value), g => g.Count() > 1);
    }

    static void AssertReading(TradeRow row, Reading reading) => Assert.Equal(
        (row["quantity"], row["unit"], row.Low, row.High),
        (reading.Quantity.Value, reading.Unit.Value, reading.Low?.Value ?? double.NaN, reading.High?.Value ?? double.NaN));

    static void AssertPhrase(TradeRow row, string place)
    {
        var (page, phrase) = (place.Split('"')[0].Trim(), place.Split('"')[1]);
        Assert.Contains(phrase, DemoText.Pages[page], StringComparison.Ordinal);
        var numbers = DemoText.Numbers(phrase, row["unit"]);
        Assert.NotEmpty(numbers);
        Assert.All(numbers, n => Assert.True(Agrees(row, n, place.EndsWith(WithinMark)), $"{place} is outside {row.Low} to {row.High}"));
    }

    static bool Agrees(TradeRow row, Quoted n, bool within) => n.Low < n.High && !within
        ? n.Low.Equals(row.Low) && n.High.Equals(row.High)
        : n.Low >= row.Low && n.High <= row.High;
}
