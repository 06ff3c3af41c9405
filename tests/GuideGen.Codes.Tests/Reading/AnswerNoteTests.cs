using GuideGen.Codes.Raw;

namespace GuideGen.Codes.Tests.Reading;

public sealed class AnswerNoteTests
{
    [Theory]
    [InlineData("7F 0A 11", "The control unit refused service 0A: it does not know this question.")]
    [InlineData("7F 03 EE", "The control unit refused service 03: reason EE.")]
    [InlineData("43 01 01 43 00 00 00", "These bytes fit both ways of sending codes. Paste the answer with its header to be sure.")]
    [InlineData("7E8 10 0A 43 04 02 99 01 13", "Part of this answer is missing, so codes may be missing too.")]
    [InlineData("59 02 FF 02 99 00 AF", "Read as car control units send it. A truck may number its faults in another way, and this answer does not tell which.")]
    [InlineData("43 01 02 99", null)]
    [InlineData("43 00", null)]
    public void An_answer_says_what_an_owner_should_know_besides_its_codes(string text, string? note) =>
        Assert.Equal(note, Assert.Single(RawAnswers.Read(text)).Note);

    [Fact]
    public void The_mask_of_an_answer_travels_with_each_status()
    {
        var code = Assert.Single(Assert.Single(RawAnswers.Read("59 02 09 02 99 00 AF")).Codes);

        Assert.Null(code.Reported.Status?[StatusBit.WarningIndicatorRequested]);
        Assert.True(code.Reported.Status?[StatusBit.Confirmed]);
    }
}
