using GuideGen.Guide.Inspection;

namespace GuideGen.Guide.Tests;

public sealed class PersonalDataTests
{
    // The identification numbers are made up; the shapes are those of ISO 3779 and of plates in several countries (from memory).
    [Theory]
    [InlineData("frame wxl20d5a7c1234567 on the papers", "wxl20d5a7c1234567", "a vehicle identification number")]
    [InlineData("WXLZZZ20ZJH123456.", "WXLZZZ20ZJH123456", "a vehicle identification number")]
    [InlineData("mail me: a.b+c@mail.example.org!", "a.b+c@mail.example.org", "an e-mail address")]
    [InlineData("+44 20 7946 0123 after six", "+44 20 7946 0123", "a phone number")]
    [InlineData("0049 (30) 901820 is the workshop", "0049 (30) 901820", "a phone number")]
    [InlineData("or 030 90182055", "030 90182055", "a phone number")]
    [InlineData("or 01632/960123", "01632/960123", "a phone number")]
    [InlineData("call me on 960 123", "call me on 960 123", "a phone number")]
    [InlineData("Tel. 555-0123", "Tel. 555-0123", "a phone number")]
    [InlineData("it is AB12 CDE", "AB12 CDE", "a number plate")]
    [InlineData("AB-123-CD", "AB-123-CD", "a number plate")]
    [InlineData("the red one, B-XY 1234", "B-XY 1234", "a number plate")]
    [InlineData("registration number 12 AB 34", "registration number 12 AB 34", "a number plate")]
    [InlineData("Mrs. Miller saw it", "Mrs. Miller", "a name")]
    [InlineData("Herr Özgür said so", "Herr Özgür", "a name")]
    [InlineData("thanks to my neighbour Anna", "my neighbour Anna", "a name")]
    public void What_leads_to_a_person_is_found(string text, string written, string kind) =>
        Assert.Equal([(written, kind)], PersonalData.In(text));

    [Theory]
    [InlineData("P0299 and P1A42, P0299-00, B1A21 and U3006 at once")]
    [InlineData("2019-05-14 at 143,000 km, 143 000 km, 143000")]
    [InlineData("part 06-12345-678, 1K0 906 051 A, R134a, 10W-40, DOT 4, 5W-30 C3")]
    [InlineData("bar 0.02-0.03, 0 to 400 mV, 0.35 ohm, 12.6 V, 26 mbar at 2,500")]
    [InlineData("CAN-H 120 ohm, OBD-II 16 pins, pin 7, PIN-A 12")]
    [InlineData("M8x25 bolts, 25 Nm + 90 degrees, 205/65 R16, H7 bulb")]
    [InlineData("counterproductive, uncharacteristically, 12345678901234567")]
    [InlineData("my mechanic said so, my wife Monday, my mate May be right")]
    [InlineData("the plate of the clutch, a plate 12 mm thick, call it 200 km, text 12")]
    [InlineData("0 800 1000 rev/min, 00:30 h, 030 km, 0500 rpm")]
    [InlineData("the workshop at example.org, @home")]
    public void What_belongs_to_the_trade_is_left_alone(string text) => Assert.Empty(PersonalData.In(text));

    [Fact]
    public void Several_are_told_from_left_to_right() =>
        Assert.Equal(["Mr Smith", "a@b.example", "+44 20 7946 0123"], PersonalData.In("Mr Smith, a@b.example, +44 20 7946 0123").Select(p => p.Written));
}
