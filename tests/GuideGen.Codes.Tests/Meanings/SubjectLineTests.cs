namespace GuideGen.Codes.Tests.Meanings;

public sealed class SubjectLineTests
{
    // Lines of the catalogue's source.
    [Theory]
    [InlineData("engine coolant temperature", "engine coolant temperature", "")]
    [InlineData("[driver] knee bolster deployment control", "[] knee bolster deployment control", "Place driver")]
    [InlineData("[left] curtain deployment control [2]", "[] curtain deployment control []", "Place left, Number 2")]
    [InlineData("oxygen sensor heater, [bank 1], [sensor 2]", "oxygen sensor heater", "Bank 1, Sensor 2")]
    [InlineData("throttle position sensor or switch [A], [cold start]", "throttle position sensor or switch []", "Letter A, Circumstance cold start")]
    [InlineData("[A][B]", "[][]", "Letter A, Letter B")]
    public void Words_keep_a_slot_for_each_side_and_lose_the_sides_that_follow(string line, string subject, string sides)
    {
        var read = SubjectLine.Read(line);

        Assert.Equal(subject, read.Subject);
        Assert.Equal(sides, string.Join(", ", read.Sides.Select(s => $"{s.Kind} {s.Value}")));
    }

    [Theory]
    [InlineData("bank 1", SideKind.Bank, "1")]
    [InlineData("banks 1 and 2", SideKind.Bank, "1 and 2")]
    [InlineData("sensor 2", SideKind.Sensor, "2")]
    [InlineData("sensor B", SideKind.Sensor, "B")]
    [InlineData("cylinder 12", SideKind.Cylinder, "12")]
    [InlineData("unit A", SideKind.Unit, "A")]
    [InlineData("catalyst 1", SideKind.Catalyst, "1")]
    [InlineData("sensor reads lean", SideKind.Circumstance, "sensor reads lean")]
    [InlineData("sensor Bias", SideKind.Circumstance, "sensor Bias")]
    [InlineData("1 to 2", SideKind.Number, "1 to 2")]
    [InlineData("A/B", SideKind.Letter, "A/B")]
    [InlineData("left front", SideKind.Place, "left front")]
    [InlineData("right", SideKind.Place, "right")]
    [InlineData("front", SideKind.Place, "front")]
    [InlineData("rear", SideKind.Place, "rear")]
    [InlineData("centre", SideKind.Place, "centre")]
    [InlineData("driver", SideKind.Place, "driver")]
    [InlineData("passenger", SideKind.Place, "passenger")]
    [InlineData("first row left", SideKind.Place, "first row left")]
    [InlineData("second row left", SideKind.Place, "second row left")]
    [InlineData("third row right", SideKind.Place, "third row right")]
    [InlineData("single", SideKind.Place, "single")]
    [InlineData("cold start", SideKind.Circumstance, "cold start")]
    public void A_bracket_is_of_the_kind_that_its_words_say(string written, SideKind kind, string value) =>
        Assert.Equal(new Side(kind, value), Side.Parse(written));
}
