namespace GuideGen.Codes.Tests.Values;

public sealed class FailureTypeTests
{
    // Rows where tables on the web are known to go wrong, and one of each category. SAE J2012-DA, as two published lists give it.
    [Theory]
    [InlineData(0x14, "wire shorted to ground or open", "electrical")]
    [InlineData(0x29, "signal not valid", "signal")]
    [InlineData(0x36, "frequency too low", "frequency or pulse width")]
    [InlineData(0x37, "frequency too high", "frequency or pulse width")]
    [InlineData(0x49, "electronics inside failed", "inside the module")]
    [InlineData(0x55, "not configured", "programming or configuration")]
    [InlineData(0x62, "two signals do not agree", "calculated check")]
    [InlineData(0x7F, "actuator stuck off", "mechanical")]
    [InlineData(0x84, "message value under its range", "bus or message")]
    [InlineData(0x85, "message value over its range", "bus or message")]
    [InlineData(0x93, "does not work", "the part itself")]
    [InlineData(0x94, "works when it should not", "the part itself")]
    [InlineData(0x9A, "operating conditions not right", "the part itself")]
    public void A_failure_type_has_its_meaning_and_category(byte value, string meaning, string category)
    {
        Assert.Equal(meaning, FailureTypes.Find(value)?.Meaning);
        Assert.Equal(category, FailureTypes.CategoryOf(value));
    }

    [Fact]
    public void No_meaning_is_told_without_its_reserve()
    {
        Assert.Equal(106, FailureTypes.All.Count());
        Assert.All(FailureTypes.All, type => Assert.StartsWith("if the module follows the standard: ", FailureTypes.Describe(type.Value), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0xF3, "F3 has no published meaning (category: the maker's own)")]
    [InlineData(0xB0, "B0 has no published meaning (category: reserved)")]
    [InlineData(0x7D, "7D has no published meaning (category: mechanical)")]
    public void A_byte_without_a_meaning_is_told_by_its_category(byte value, string words) => Assert.Equal(words, FailureTypes.Describe(value));
}
