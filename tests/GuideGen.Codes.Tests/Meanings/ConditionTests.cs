namespace GuideGen.Codes.Tests.Meanings;

public sealed class ConditionTests
{
    [Fact]
    public void Every_condition_is_used_and_every_used_one_is_in_the_list() =>
        Assert.Equal(
            Conditions.All.Select(c => c.Key).Order(StringComparer.Ordinal),
            CodeCatalogue.All.Select(e => e.Condition.Key).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_condition_says_what_was_seen_and_what_to_check_with_cautions()
    {
        Assert.All(Conditions.All, c =>
        {
            Assert.EndsWith(".", c.Saw, StringComparison.Ordinal);
            Assert.NotEmpty(c.Steps);
            Assert.NotEmpty(c.Cautions);
        });
        Assert.Equal(Conditions.All.Length, Conditions.All.Select(c => c.Key).Distinct().Count());
    }

    [Fact]
    public void No_meaning_keeps_a_slot_or_a_key() =>
        Assert.All(CodeCatalogue.All, e => Assert.DoesNotMatch(@"[\[\]{}]|  |: $|\w-or-\w", e.Meaning));

    // Words of a second language; a toy, to show that the grammar takes all its words from a table.
    sealed class Backwards : IMeaningWords
    {
        public string Subject(string english) => english == "vehicle speed sensor []" ? "Fühler [] für Fahrgeschwindigkeit" : english;

        public string Side(Side side, bool follows) => follows ? $"({side.Kind} {side.Value})" : side.Value;

        public string Condition(ConditionInfo condition, bool inCircuit) => (inCircuit ? "Leitung, " : "") + (condition.Key == "low" ? "zu niedrig" : condition.Key);
    }

    [Theory]
    [InlineData("P0502", "Fühler A für Fahrgeschwindigkeit: Leitung, zu niedrig")]
    [InlineData("P0132", "Oxygen sensor, (Bank 1), (Sensor 1): Leitung, high-voltage")]
    public void Another_language_needs_words_only(string code, string meaning) =>
        Assert.Equal(meaning, MeaningGrammar.Word(CodeCatalogue.Find(TroubleCode.Parse(code))!, new Backwards()));
}
