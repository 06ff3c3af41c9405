namespace GuideGen.Codes.Tests.Values;

public sealed class StatusByteTests
{
    // Bit numbers of ISO 14229-1, as two or more published tables give them.
    [Theory]
    [InlineData(0x01, StatusBit.TestFailed)]
    [InlineData(0x02, StatusBit.TestFailedThisOperationCycle)]
    [InlineData(0x04, StatusBit.Pending)]
    [InlineData(0x08, StatusBit.Confirmed)]
    [InlineData(0x10, StatusBit.TestNotCompletedSinceLastClear)]
    [InlineData(0x20, StatusBit.TestFailedSinceLastClear)]
    [InlineData(0x40, StatusBit.TestNotCompletedThisOperationCycle)]
    [InlineData(0x80, StatusBit.WarningIndicatorRequested)]
    public void Each_bit_stands_where_the_standard_puts_it(byte value, StatusBit bit)
    {
        Assert.All(Enum.GetValues<StatusBit>(), b => Assert.Equal(b == bit, new StatusByte(value)[b]));
        Assert.Single(new StatusByte(value).Words);
    }

    [Theory]
    [InlineData(0xAF, "present now")]
    [InlineData(0x2F, "present now")]
    [InlineData(0x28, "stored, but not failing at the last check")]
    [InlineData(0x24, "seen lately, not yet often enough to be stored")]
    [InlineData(0x50, "not checked since the codes were cleared: this proves nothing either way")]
    [InlineData(0x20, "failed once since the codes were cleared, not lately")]
    [InlineData(0x40, "not checked yet on this trip")]
    [InlineData(0x00, "no fault now, none stored")]
    public void The_summary_tells_an_owner_what_matters_most(byte value, string summary) =>
        Assert.Equal(summary, new StatusByte(value).Summary);

    [Fact]
    public void A_bit_outside_the_availability_mask_is_unknown()
    {
        var status = new StatusByte(0xAF, Available: 0x09);

        Assert.Null(status[StatusBit.WarningIndicatorRequested]);
        Assert.Null(status[StatusBit.TestNotCompletedThisOperationCycle]);
        Assert.True(status[StatusBit.Confirmed]);
        Assert.Equal(["failing at the last check", "seen often enough to be stored"], status.Words);
    }
}
