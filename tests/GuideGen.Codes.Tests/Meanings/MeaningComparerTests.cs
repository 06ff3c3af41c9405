using System.Text.RegularExpressions;

namespace GuideGen.Codes.Tests.Meanings;

public sealed class MeaningComparerTests
{
    [Theory]
    [InlineData("P0102", "Mass air flow sensor: signal too high")]
    [InlineData("P0103", "MAF circuit low input")]
    [InlineData("P0299", "Boost pressure too high")]
    [InlineData("P0234", "Turbo underboost")]
    [InlineData("P0087", "Fuel rail pressure too high")]
    [InlineData("P2413", "Oxygen sensor heater, bank 1")]
    [InlineData("P0171", "Mixture too rich, bank 1")]
    [InlineData("P0171", "Mixture too lean on bank 2")]
    [InlineData("P0302", "Misfire on cylinder 3")]
    [InlineData("P0136", "Oxygen sensor circuit, bank 1 sensor 1")]
    [InlineData("P2457", "Fuel level sensor reads nonsense")]
    [InlineData("P0420", "Glow plug 2 worn out")]
    [InlineData("P0741", "Torque converter clutch stuck on")]
    [InlineData("P2111", "Throttle actuator stuck closed")]
    [InlineData("P0122", "Pedal position sensor B, circuit low")]
    [InlineData("C0034", "Left front wheel speed sensor")]
    [InlineData("B0002", "Passenger's frontal airbag")]
    [InlineData("P0011", "Camshaft timing retarded")]
    public void An_opposite_meaning_is_a_contradiction(string code, string text) => Assert.NotNull(Contradiction(code, text));

    [Theory]
    [InlineData("P0299", "The turbo makes less pressure than asked for, most often a split charge hose.")]
    [InlineData("P0299", "Underboost")]
    [InlineData("P0101", "Air flow does not fit engine speed: a dirty sensor reads too low, a leak makes it look too high.")]
    [InlineData("P0118", "Coolant temperature sensor circuit high, the reading shows a low temperature.")]
    [InlineData("P0118", "Coolant sensor unplugged: the engine thinks it is very cold.")]
    [InlineData("P0171", "Too little fuel for the air, bank 1; an air leak or low fuel pressure.")]
    [InlineData("P0087", "Rail pressure too low, often a blocked filter, rarely the high-pressure pump.")]
    [InlineData("P0087", "Fuel pressure below what the pump should reach")]
    [InlineData("P0401", "Not enough exhaust gas comes back. The valve is stuck closed or coked up.")]
    [InlineData("P2463", "DPF full of soot")]
    [InlineData("P0128", "Engine does not warm up, thermostat stuck open")]
    [InlineData("P0562", "Battery voltage too low while driving")]
    [InlineData("P0302", "Cylinder 2 misfires; swap its coil with cylinder 3 and read again.")]
    [InlineData("P0340", "Camshaft sensor gives no signal")]
    [InlineData("P0016", "Timing chain stretched: crankshaft and camshaft no longer agree")]
    [InlineData("U0100", "No messages from the engine's control unit")]
    [InlineData("C0035", "Left front wheel speed sensor")]
    [InlineData("C0035", "Right front wheel speed sensor")]
    [InlineData("P0420", "Catalyst no longer stores oxygen, bank 1")]
    [InlineData("P0AA6", "Insulation of the high-voltage system too weak")]
    [InlineData("P1101", "Whatever the maker says")]
    [InlineData("P0700", "The gearbox asks for the lamp; read the transmission codes")]
    [InlineData("P0335", "Crankshaft sensor, no signal")]
    [InlineData("P0670", "Glow plug control module circuit")]
    [InlineData("P2002", "Particulate filter lets soot through")]
    public void Other_words_and_causes_are_no_contradiction(string code, string text) => Assert.Null(Contradiction(code, text));

    [Theory]
    [InlineData("B0002", "Passenger's frontal airbag, stage 2", "passenger")]
    [InlineData("B0010", "Driver's frontal airbag, stage 1", "driver")]
    [InlineData("B0020", "Side airbag on the right", "right")]
    [InlineData("B0028", "Side airbag on the left", "left")]
    [InlineData("C0035", "Rear wheel speed sensor", "rear")]
    [InlineData("B0002", "Driver's and passenger's airbags", null)]
    [InlineData("B0010", "Driver's and passenger's airbags", null)]
    [InlineData("B0010", "Frontal airbag, stage 1", null)]
    [InlineData("C0035", "Front and rear wheel speed sensors", null)]
    public void Another_place_than_the_standard_s_is_named_unless_both_are(string code, string text, string? author) =>
        Assert.Equal(author, Contradiction(code, text)?.Author);

    /// <summary>The text of the open list is the entry in other words; source: Data/generic-codes.tsv.</summary>
    [Fact]
    public void The_open_list_contradicts_none_of_its_own_codes() =>
        Assert.Equal([], ListedCode.All.Select(f => (f.Code, Clash: Contradiction(f.Code.ToString(), f.Text))).Where(c => c.Clash is not null));

    [Theory]
    [InlineData(@"\bLow$", "High")]
    [InlineData(@"\bHigh$", "Low")]
    [InlineData("Too Low", "Too High")]
    [InlineData("Too High", "Too Low")]
    [InlineData("Stuck Open", "Stuck Closed")]
    [InlineData("Stuck Closed", "Stuck Open")]
    [InlineData("Stuck On", "Stuck Off")]
    [InlineData("Stuck Off", "Stuck On")]
    [InlineData("Too Lean", "Too Rich")]
    [InlineData("Bank 1", "Bank 2")]
    [InlineData("Bank 2", "Bank 1")]
    [InlineData("Cylinder 1", "Cylinder 4")]
    [InlineData("Left", "Right")]
    public void A_turned_text_of_the_open_list_is_found(string right, string wrong)
    {
        var turned = ListedCode.All.Where(f => f.Code.Owner != CodeOwner.Maker && Regex.IsMatch(f.Text, right) && !f.Text.Contains(wrong, StringComparison.Ordinal))
            .Select(f => (f.Code, Text: Regex.Replace(f.Text, right, wrong))).ToList();
        var missed = turned.Where(t => Contradiction(t.Code.ToString(), t.Text) is null).ToList();

        Assert.NotEmpty(turned);
        Assert.True(missed.Count <= turned.Count / 10, $"missed {missed.Count} of {turned.Count}: {string.Join("; ", missed.Take(8))}");
    }

    static Contradiction? Contradiction(string code, string text) => MeaningComparer.Contradicts(text, CodeCatalogue.Find(TroubleCode.Parse(code))!);
}
